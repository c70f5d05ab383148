//! Connections that can be cut in the middle of a request.
//!
//! A web framework always answers. To test what happens when the line goes
//! dead, the server listens through this wrapper, and a handler that holds the
//! connection's [`Line`] can make every further write fail.

use std::io;
use std::pin::Pin;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::task::{Context, Poll};
use std::time::Duration;

use axum::extract::connect_info::Connected;
use axum::serve::{IncomingStream, Listener};
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::net::{TcpListener, TcpStream};

/// One client's connection, as a request handler sees it.
#[derive(Clone, Default)]
pub(crate) struct Line(Arc<AtomicBool>);

impl Line {
    /// Nothing more reaches the client: its call ends as a network error.
    pub(crate) fn cut(&self) {
        self.0.store(true, Ordering::SeqCst);
    }

    pub(crate) fn is_cut(&self) -> bool {
        self.0.load(Ordering::SeqCst)
    }
}

impl Connected<IncomingStream<'_, CuttableListener>> for Line {
    fn connect_info(stream: IncomingStream<'_, CuttableListener>) -> Self {
        stream.io().line.clone()
    }
}

pub(crate) struct CuttableListener(pub(crate) TcpListener);

pub(crate) struct CuttableStream {
    stream: TcpStream,
    line: Line,
}

impl Listener for CuttableListener {
    type Io = CuttableStream;
    type Addr = std::net::SocketAddr;

    async fn accept(&mut self) -> (Self::Io, Self::Addr) {
        loop {
            match self.0.accept().await {
                Ok((stream, address)) => {
                    let line = Line::default();
                    return (CuttableStream { stream, line }, address);
                }
                // Out of file handles, most likely: give the test time to free some.
                Err(_) => tokio::time::sleep(Duration::from_millis(20)).await,
            }
        }
    }

    fn local_addr(&self) -> io::Result<Self::Addr> {
        self.0.local_addr()
    }
}

impl AsyncRead for CuttableStream {
    fn poll_read(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        buffer: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_read(context, buffer)
    }
}

impl AsyncWrite for CuttableStream {
    fn poll_write(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[u8],
    ) -> Poll<io::Result<usize>> {
        if self.line.is_cut() {
            return Poll::Ready(Err(io::ErrorKind::ConnectionReset.into()));
        }
        Pin::new(&mut self.stream).poll_write(context, bytes)
    }

    fn poll_flush(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_flush(context)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_shutdown(context)
    }
}
