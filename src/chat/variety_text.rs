//! Varieties in words: which one it is, and what its packet says.

use crate::club::Variety;
use crate::planning::{CountedFrom, Packet, PacketError, PacketLeftOut, PacketOutdoors, Span};
use crate::wording::{Speech, args, sentence};

use super::desk::Desk;

/// "tomato “Early Lantern”", or the crop alone where the variety has no name.
pub(super) fn variety_words(desk: &Desk<'_>, variety: &Variety) -> String {
    variety_name(variety, &desk.speech)
}

/// As [`variety_words`].
pub(super) fn variety_name(variety: &Variety, speech: &Speech) -> String {
    let args = args().text("crop", speech.crop(&variety.crop));
    match &variety.name {
        Some(name) => speech.voice.say("variety-name", &args.text("name", name)),
        None => speech.crop(&variety.crop).to_owned(),
    }
}

/// What a packet says, as a list: "start indoors 6–8 weeks before the last frost and 75 days".
pub(super) fn packet_words(packet: &Packet, speech: &Speech) -> String {
    let voice = &speech.voice;
    let weeks = |low: i64, high: i64| voice.weeks_range(7 * low, 7 * high);
    let mut bits = Vec::new();
    if let Some(Span { low, high }) = packet.indoors_weeks {
        bits.push(voice.say("packet-indoors", &args().text("weeks", weeks(low, high))));
    }
    let from_frost = |span: Span| match span {
        Span { low, high } if high <= 0 && low < 0 => {
            voice.say("packet-before", &args().text("weeks", weeks(-high, -low)))
        }
        Span { low, high } if low >= 0 && high > 0 => {
            voice.say("packet-after", &args().text("weeks", weeks(low, high)))
        }
        Span { low: 0, .. } => speech.plain("packet-at-frost"),
        Span { low, high } => {
            let args = args().text("before", weeks(-low, -low)).text("after", weeks(high, high));
            voice.say("packet-around", &args)
        }
    };
    if let Some(span) = packet.set_out_weeks {
        bits.push(voice.say("packet-set-out", &args().text("when", from_frost(span))));
    }
    match packet.outdoors {
        Some(PacketOutdoors::Weeks(span)) => {
            bits.push(voice.say("packet-in-place", &args().text("when", from_frost(span))));
        }
        Some(PacketOutdoors::AfterFrost) => bits.push(speech.plain("packet-after-danger")),
        None => {}
    }
    if let Some(days) = packet.days {
        let args = args().text("days", voice.days_range(days.low, days.high));
        bits.push(match packet.counted_from {
            Some(CountedFrom::SettingOut) => voice.say("packet-days-from-setting-out", &args),
            Some(CountedFrom::Sowing) => voice.say("packet-days-from-sowing", &args),
            None => voice.say("packet-days", &args),
        });
    }
    if let Some(days) = packet.emerge_days {
        let days = voice.days_range(days.low, days.high);
        bits.push(voice.say("packet-up", &args().text("days", days)));
    }
    if let Some(depth) = packet.depth_mm {
        let depth = voice.length_range_mm(depth.low, depth.high);
        bits.push(voice.say("packet-depth", &args().text("depth", depth)));
    }
    if let Some(cm) = packet.apart_cm {
        bits.push(voice.say("packet-apart", &args().text("apart", voice.length_mm(10 * cm))));
    }
    if let Some(cm) = packet.rows_cm {
        bits.push(voice.say("packet-rows", &args().text("rows", voice.length_mm(10 * cm))));
    }
    voice.list_and(&bits)
}

/// What an answer was reckoned with: "By your packet of tomato “Early Lantern”: …".
pub(super) fn by_packet(variety: &Variety, speech: &Speech) -> String {
    let args = args()
        .text("variety", variety_name(variety, speech))
        .text("packet", packet_words(&variety.packet, speech));
    speech.voice.say("by-packet", &args)
}

/// Why a packet's numbers were not taken: one sentence.
pub(super) fn packet_error(error: PacketError, speech: &Speech) -> String {
    let voice = &speech.voice;
    let bounds = |number: i64, bounds: std::ops::RangeInclusive<i64>| {
        args().number("number", number).number("low", *bounds.start()).number("high", *bounds.end())
    };
    match error {
        PacketError::Empty => speech.plain("variety-no-numbers"),
        PacketError::Days(days) => voice.say("packet-bad-days", &bounds(days, Packet::DAYS)),
        PacketError::Indoors(weeks) => {
            voice.say("packet-bad-indoors", &bounds(weeks, Packet::INDOORS))
        }
        PacketError::Offset(weeks) => {
            voice.say("packet-bad-offset", &bounds(weeks.abs(), 0..=*Packet::OFFSET.end()))
        }
        PacketError::Emerge(days) => voice.say("packet-bad-up", &bounds(days, Packet::EMERGE)),
        PacketError::Depth(mm) => {
            let args = args().text("depth", voice.length_mm(mm));
            voice.say("packet-bad-depth", &args.text("most", voice.length_mm(*Packet::DEPTH.end())))
        }
        PacketError::Spacing(cm) => {
            let args = args().text("apart", voice.length_mm(10 * cm));
            let most = voice.length_mm(10 * Packet::SPACING.end());
            voice.say("packet-bad-spacing", &args.text("most", most))
        }
    }
}

/// That a number of the packet was left out, and why.
pub(super) fn left_out_line(left_out: PacketLeftOut, variety: &Variety, speech: &Speech) -> String {
    let about = speech.about(&variety.crop);
    sentence(&match left_out {
        PacketLeftOut::Indoors => speech.voice.say("packet-left-indoors", &about),
        PacketLeftOut::Outdoors => speech.voice.say("packet-left-outdoors", &about),
    })
}
