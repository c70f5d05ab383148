# Both stages are of one Debian release, so that the program meets the C library it was linked to.
FROM rust:1.95-slim-bookworm AS build
WORKDIR /src

# The dependencies alone, so that this layer is built again only when they change.
COPY Cargo.toml Cargo.lock build.rs ./
RUN mkdir src \
    && echo 'fn main() {}' > src/main.rs \
    && touch src/lib.rs \
    && cargo build --release --locked \
    && rm -r src

COPY migrations migrations
COPY locales locales
COPY src src
# Cargo goes by file times, and the copied files are older than the stand-ins above.
RUN touch build.rs src/main.rs src/lib.rs \
    && cargo build --release --locked

# Root certificates and time zones are compiled in: nothing else needs to be installed here.
FROM debian:bookworm-slim
RUN groupadd --gid 10001 sowbell \
    && useradd --uid 10001 --gid sowbell --no-create-home --home-dir /data \
        --shell /usr/sbin/nologin sowbell \
    && install -d -o sowbell -g sowbell -m 0700 /data
COPY --from=build /src/target/release/sowbell /usr/local/bin/sowbell

USER 10001:10001
# sqlite:sowbell.db, the database that is used when none is named, lies here.
WORKDIR /data
VOLUME /data
STOPSIGNAL SIGTERM
ENTRYPOINT ["sowbell"]
CMD ["serve"]
