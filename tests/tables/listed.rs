//! What the catalogue must hold, and what people call it.

use std::collections::BTreeSet;

use sowbell::catalogue::{Catalogue, Meaning, Names, normalise};
use sowbell::planning::{CropId, Kind};

use super::{catalogue, crop};

const VEGETABLES: &str = "tomato pepper eggplant tomatillo okra cucumber summer_squash \
    winter_squash pumpkin gourd melon watermelon bush_bean pole_bean runner_bean lima_bean \
    broad_bean pea sweet_corn broccoli cabbage cauliflower brussels_sprouts kale collards kohlrabi \
    chinese_cabbage bok_choy lettuce spinach chard arugula endive mustard_greens celery celeriac \
    onion scallion leek beet carrot parsnip radish turnip rutabaga artichoke potato garlic \
    sweet_potato";
const HERBS: &str = "basil parsley cilantro dill fennel chives thyme oregano marjoram sage \
    rosemary lavender mint lemon_balm chamomile borage summer_savory";
const FLOWERS: &str = "zinnia marigold cosmos sunflower strawflower carnation snapdragon petunia \
    pansy impatiens begonia geranium salvia celosia china_aster statice nicotiana nasturtium \
    sweet_pea sweet_alyssum ageratum bachelors_button calendula cleome coleus four_oclock \
    globe_amaranth lisianthus lobelia moss_rose rudbeckia vinca morning_glory larkspur \
    love_in_a_mist foxglove hollyhock stock verbena";

#[test]
fn the_crops_of_a_club_are_listed() {
    let catalogue = catalogue();
    for (ids, kind) in [(VEGETABLES, Kind::Vegetable), (HERBS, Kind::Herb), (FLOWERS, Kind::Flower)]
    {
        for id in ids.split_whitespace() {
            assert_eq!(crop(&catalogue, id).kind, kind, "{id}");
        }
    }
    let kinds: Vec<Kind> = catalogue.iter().map(|crop| crop.kind).collect();
    let mut runs = kinds.clone();
    runs.dedup();
    assert_eq!(runs, [Kind::Vegetable, Kind::Herb, Kind::Flower], "each kind stands together");
    assert_eq!(kinds.len(), catalogue.len());
}

#[test]
fn every_source_that_is_listed_is_used() {
    let catalogue = catalogue();
    let mut used: BTreeSet<&str> = catalogue.iter().flat_map(Catalogue::cited_by).collect();
    // The planting classes rest on these.
    used.extend(["csu_720", "illinois_2017", "udaf", "umd_2023"]);
    let listed: BTreeSet<&str> = catalogue.sources().map(|(id, _)| id).collect();
    assert_eq!(used, listed);
}

#[test]
fn names_are_written_as_inside_a_sentence() {
    const PROPER: [&str; 3] = ["Brussels", "China", "Chinese"];
    let catalogue = catalogue();
    let names = Names::english(&catalogue).expect("sound names");
    for crop in catalogue.iter() {
        for name in [names.name(&crop.id), names.plural(&crop.id)] {
            for word in name.split(' ').filter(|word| !PROPER.contains(word)) {
                assert_eq!(word, word.to_lowercase(), "{name}");
            }
            assert!(names.lookup(&normalise(name)).is_some(), "{name}");
        }
    }
    assert!(names.words().all(|words| normalise(words) == words));
}

#[test]
fn everyday_words_are_understood() {
    let names = Names::english(&catalogue()).expect("sound names");
    for (words, id) in [
        ("Tomatoes", "tomato"),
        ("jalapeños", "pepper"),
        ("aubergine", "eggplant"),
        ("courgettes", "summer_squash"),
        ("zucchini", "summer_squash"),
        ("butternut squash", "winter_squash"),
        ("cantaloupe", "melon"),
        ("cukes", "cucumber"),
        ("corn", "sweet_corn"),
        ("sprouts", "brussels_sprouts"),
        ("brussel sprouts", "brussels_sprouts"),
        ("romaine", "lettuce"),
        ("iceberg", "lettuce"),
        ("rocket", "arugula"),
        ("swede", "rutabaga"),
        ("beetroot", "beet"),
        ("pak choi", "bok_choy"),
        ("spring onions", "scallion"),
        ("onions", "onion"),
        ("cabbages", "cabbage"),
        ("fava beans", "broad_bean"),
        ("coriander", "cilantro"),
        ("cornflower", "bachelors_button"),
        ("Bachelor’s buttons", "bachelors_button"),
        ("four o'clocks", "four_oclock"),
        ("alyssum", "sweet_alyssum"),
        ("pot marigold", "calendula"),
        ("french marigolds", "marigold"),
        ("busy lizzie", "impatiens"),
        ("love-in-a-mist", "love_in_a_mist"),
    ] {
        let expected = Meaning::Crop(CropId::new(id));
        assert_eq!(names.lookup(&normalise(words)), Some(&expected), "{words}");
    }
}

#[test]
fn words_that_mean_several_things_are_asked_about() {
    let names = Names::english(&catalogue()).expect("sound names");
    for (words, means, outside) in [
        ("beans", "bush_bean pole_bean runner_bean", false),
        ("green beans", "bush_bean pole_bean", false),
        ("string bean", "bush_bean pole_bean", false),
        ("squash", "summer_squash winter_squash", false),
        ("marigolds", "marigold calendula", false),
        ("geranium", "geranium", true),
        ("vinca", "vinca", true),
        ("endive", "endive", true),
        ("chicory", "endive", true),
    ] {
        let Some(Meaning::Ambiguous(word)) = names.lookup(words) else {
            panic!("{words} means several things")
        };
        let ids: Vec<&str> = word.means.iter().map(CropId::as_str).collect();
        assert_eq!(ids, means.split(' ').collect::<Vec<_>>(), "{words}");
        assert_eq!(word.outside.is_some(), outside, "{words}");
    }
}
