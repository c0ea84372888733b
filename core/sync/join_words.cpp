#include "core/sync/join_words.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

// Chosen by hand for Lidlark by the rules in the header, from words that Debian's wamerican-small
// and wbritish-small (2020.12.07-2) spell alike. These come of SCOWL, copyright 2000-2011 by Kevin
// Atkinson, who lets anybody use, copy, modify and distribute them for any purpose. That none
// sounds like another was judged by ear, and by espeak-ng 1.51 against both lists: it found none
// but other spellings of a word of ours (cooky, grille, pixy, trolly, wooly). Never change the
// order, nor a word: a code that was shown would be another on the next phone.
// clang-format off
constexpr std::array<std::string_view, joinWordCount> all{
    "acrobat", "afloat", "agenda", "album", "alcove", "alley", "almanac", "almond",
    "amaze", "anchor", "animal", "ankle", "anorak", "answer", "antenna", "antler",
    "anvil", "apple", "apricot", "apron", "arcade", "archery", "aroma", "arrange",
    "arrow", "artist", "artwork", "athlete", "atlas", "attic", "auburn", "audio",
    "autumn", "avenue", "avocado", "awning", "azure", "baboon", "badge", "baggage",
    "baker", "balcony", "bamboo", "banana", "banjo", "banner", "banquet", "barber",
    "barn", "barrel", "basil", "basket", "bath", "battery", "beacon", "beak",
    "bedroom", "beehive", "beeswax", "bellows", "belt", "bench", "beret", "bicycle",
    "bingo", "biplane", "birch", "biscuit", "bison", "blanket", "blaze", "blend",
    "blink", "bloom", "blossom", "blouse", "bobbin", "bobcat", "bobsled", "bonfire",
    "bonnet", "bonus", "booklet", "booster", "booth", "borrow", "bottle", "bounce",
    "bowling", "braces", "brave", "breeze", "bridge", "bright", "brisk", "broad",
    "brocade", "bronze", "brook", "brownie", "brush", "bubble", "bucket", "buffet",
    "bugle", "builder", "bulb", "bulldog", "bump", "bundle", "bushel", "butler",
    "button", "buzz", "cabbage", "cabin", "cable", "cactus", "cake", "calf",
    "camel", "camp", "canary", "candy", "canoe", "canteen", "canyon", "capsule",
    "captain", "caramel", "cargo", "caribou", "carpet", "carton", "carve", "cascade",
    "cashew", "castle", "catfish", "catwalk", "cavern", "celery", "cello", "cement",
    "ceramic", "chair", "chalk", "chamber", "change", "chapter", "charm", "cheek",
    "chef", "cherry", "chess", "chick", "child", "chime", "chisel", "chorus",
    "chuckle", "chunk", "circus", "citrus", "city", "clasp", "clatter", "clay",
    "clean", "cliff", "clip", "cloth", "cloud", "clover", "clown", "club",
    "cluster", "coach", "coat", "cobalt", "cobble", "cobweb", "cocoa", "cod",
    "coffee", "collar", "colony", "column", "comb", "comet", "comic", "compost",
    "concert", "cone", "cookie", "cool", "copper", "copy", "coral", "cordial",
    "corn", "costume", "cotton", "counter", "couple", "courage", "cousin", "cowboy",
    "coyote", "crab", "cradle", "craft", "crane", "crater", "crayon", "create",
    "crest", "cricket", "crimson", "crinkle", "crisp", "croak", "crocus", "crowd",
    "crumb", "crunchy", "crystal", "cube", "cubic", "cuddle", "cuff", "curl",
    "curry", "curtain", "curved", "cushion", "custard", "cutlery", "daisy", "dance",
    "dart", "date", "dawn", "daytime", "dazzle", "decade", "denim", "desk",
    "dial", "diamond", "dig", "disco", "display", "dive", "diving", "dolphin",
    "dome", "domino", "donate", "donkey", "door", "dotted", "double", "dragon",
    "drawer", "dream", "dress", "drift", "drink", "driver", "drizzle", "drop",
    "drum", "duck", "dusty", "duvet", "eagle", "early", "earring", "earth",
    "easel", "eel", "egg", "elastic", "elbow", "elder", "elm", "embark",
    "emerald", "enamel", "energy", "engine", "engrave", "enjoy", "equator", "event",
    "every", "excite", "explore", "eyelash", "fabric", "factory", "falcon", "family",
    "fancy", "fanfare", "farm", "fashion", "fasten", "feast", "fence", "fern",
    "ferret", "festive", "fiddle", "field", "fiesta", "film", "finch", "finger",
    "firefly", "fishing", "fizz", "flake", "flannel", "flash", "fleet", "flight",
    "flint", "floral", "flow", "fluff", "fluid", "flute", "flyover", "foam",
    "foil", "folder", "forest", "forget", "fork", "formula", "fossil", "fox",
    "frame", "freckle", "freezer", "fresh", "friend", "fringe", "frog", "frolic",
    "frost", "frozen", "fruit", "fudge", "fuzzy", "gadget", "galaxy", "gale",
    "gallop", "gander", "garage", "garden", "garlic", "garment", "garnet", "gateway",
    "gather", "gear", "gem", "gentle", "gerbil", "gift", "giggle", "gingham",
    "giraffe", "glacier", "glass", "gleam", "glider", "globe", "glossy", "glue",
    "gnome", "goal", "goblet", "golden", "goose", "gosling", "gourd", "grape",
    "grassy", "gravy", "green", "griddle", "grill", "grin", "grotto", "ground",
    "grove", "grow", "guinea", "guitar", "gull", "gumdrop", "haddock", "hairdo",
    "halibut", "hamlet", "hammock", "hamper", "hamster", "handle", "happy", "harmony",
    "harness", "harvest", "hazel", "headway", "heap", "hedge", "helmet", "herb",
    "heron", "herring", "hexagon", "hinge", "hobby", "hockey", "holiday", "holly",
    "honest", "hoof", "hop", "horizon", "hornet", "hotel", "hound", "hover",
    "hurdle", "hut", "hyena", "icicle", "icing", "icon", "imagine", "indigo",
    "indoor", "ink", "insect", "invite", "iris", "ironing", "island", "item",
    "ivory", "ivy", "jacket", "jaguar", "jangle", "jar", "jazz", "jelly",
    "jersey", "jester", "jetty", "jiffy", "jigsaw", "journal", "joyful", "juggle",
    "juice", "jumbo", "jumper", "junior", "kayak", "kennel", "kettle", "keyhole",
    "kimono", "kingdom", "kiosk", "kite", "kitten", "kiwi", "koala", "label",
    "lace", "ladle", "lagoon", "lamb", "landing", "lantern", "large", "lark",
    "latch", "laugh", "laundry", "laurel", "layer", "leaf", "leather", "lemon",
    "leopard", "lettuce", "lever", "library", "lid", "lilac", "lily", "linen",
    "lion", "list", "litter", "lively", "lizard", "lobster", "local", "lodge",
    "long", "lotus", "love", "luggage", "lullaby", "lunar", "lupin", "lyric",
    "machine", "magic", "magnet", "magpie", "mailman", "mallard", "mammal", "mango",
    "mansion", "maple", "marble", "march", "marina", "market", "maroon", "marvel",
    "mascot", "mason", "meadow", "melon", "mend", "mermaid", "merry", "message",
    "meteor", "mill", "minibus", "minnow", "mint", "mirror", "misty", "mix",
    "modest", "mohair", "moist", "mole", "money", "month", "moon", "mosaic",
    "moss", "motto", "mouse", "movie", "muddy", "muffin", "mug", "mulch",
    "museum", "music", "mustang", "mystery", "napkin", "natural", "nectar", "needle",
    "newt", "nimble", "noble", "noisy", "noodle", "nook", "north", "novel",
    "novice", "nugget", "nutmeg", "nylon", "oak", "oatmeal", "oblong", "ocean",
    "octagon", "octopus", "olive", "onion", "orange", "orbit", "orchid", "otter",
    "outdoor", "outlook", "oval", "oven", "owl", "oyster", "pack", "padlock",
    "painter", "palace", "palm", "pancake", "panel", "panther", "paper", "paprika",
    "parade", "parcel", "parrot", "parsnip", "partner", "pasta", "patio", "patrol",
    "pattern", "peacock", "peanut", "pebble", "pecan", "pelican", "pencil", "pendant",
    "penguin", "penny", "pepper", "perch", "perfume", "petal", "pewter", "phone",
    "photo", "piano", "piccolo", "pickle", "picnic", "picture", "pigeon", "pigpen",
    "pigtail", "pillar", "pilot", "pin", "pioneer", "pipe", "pirate", "pixie",
    "pizza", "plant", "plaster", "playpen", "plaza", "plenty", "pliers", "plug",
    "plumber", "plunge", "plush", "plywood", "poem", "polar", "polka", "pollen",
    "polo", "pond", "popcorn", "poppy", "popular", "porter", "postman", "potato",
    "pottery", "pouch", "powder", "prawn", "prepare", "pretzel", "price", "print",
    "prism", "proud", "pudding", "pulley", "pulp", "pumpkin", "punch", "puppet",
    "purple", "puzzle", "quack", "quail", "quartet", "queen", "quest", "quilt",
    "quiver", "rabbit", "radar", "radish", "rafters", "rail", "rainy", "raisin",
    "ramble", "ranch", "ranger", "rattle", "raven", "refresh", "reptile", "rhino",
    "ribbon", "ride", "rigging", "ringlet", "ripple", "rivet", "roast", "robe",
    "robin", "robot", "rocky", "rodeo", "roofing", "room", "rowboat", "rowing",
    "royal", "rubber", "ruby", "rudder", "ruffle", "ruler", "rummage", "rumple",
    "runway", "rustic", "saddle", "safari", "safety", "saffron", "sage", "sailor",
    "salad", "salmon", "salty", "salute", "sandal", "sardine", "sash", "satchel",
    "satin", "saucer", "sauna", "sawdust", "scallop", "scamper", "scarf", "science",
    "scooter", "scout", "screw", "scrub", "seafood", "seaport", "season", "seat",
    "seaweed", "seesaw", "sequin", "shadow", "shampoo", "shawl", "sheep", "shelf",
    "sherbet", "shield", "shimmer", "shiny", "ship", "shirt", "shorts", "shovel",
    "shower", "shrimp", "shuffle", "shutter", "signal", "silent", "silk", "silver",
    "sizzle", "skater", "sketch", "skill", "skyline", "slate", "sleek", "slide",
    "slipper", "small", "smile", "smock", "smoke", "smooth", "snack", "snail",
    "snake", "sneeze", "snooze", "snorkel", "snowy", "soapy", "soccer", "socket",
    "soda", "soft", "sonata", "soothe", "soprano", "soup", "south", "spanner",
    "spark", "spice", "spider", "spinach", "spiral", "splash", "sponge", "spoon",
    "sport", "spotted", "sprig", "sprout", "spruce", "squash", "squeak", "squid",
    "stadium", "stamp", "staple", "star", "statue", "steam", "steeple", "stereo",
    "stirrup", "storm", "stove", "straw", "street", "string", "stroll", "student",
    "sugar", "summer", "sundial", "sunlit", "sunny", "sunrise", "sunset", "swallow",
    "swan", "sweater", "sweeper", "swell", "swift", "swim", "swing", "swirl",
    "switch", "swoop", "tabby", "tablet", "tadpole", "tall", "talon", "tandem",
    "tape", "tassel", "taste", "taxi", "teach", "teapot", "tendril", "tennis",
    "tent", "terrier", "thicket", "thimble", "thirsty", "thistle", "thorn", "thread",
    "thumb", "thunder", "tidal", "tidy", "tiger", "tight", "tile", "tinkle",
    "tinsel", "tiptoe", "toaster", "today", "toggle", "token", "tomato", "tomcat",
    "toolkit", "topaz", "torch", "tornado", "toucan", "tower", "toy", "tractor",
    "train", "trapeze", "trawler", "tray", "treacle", "tree", "trellis", "trestle",
    "trick", "trifle", "trinket", "tripod", "trolley", "trophy", "trout", "trowel",
    "trumpet", "trunk", "tulip", "tumble", "tundra", "tune", "tunnel", "turbine",
    "turf", "turnip", "turret", "turtle", "tusk", "tweed", "twig", "twine",
    "twist", "umpire", "uncle", "unicorn", "unlock", "unwrap", "usher", "valve",
    "vanilla", "vase", "velvet", "vest", "video", "viewer", "village", "vine",
    "vintage", "viola", "visitor", "volcano", "wafer", "waffle", "wagon", "walk",
    "wallet", "walnut", "walrus", "waltz", "wand", "warmer", "washer", "weaver",
    "weekday", "welcome", "wheat", "whisk", "wicket", "willow", "windy", "winter",
    "wisdom", "wolf", "wooden", "woolly", "wrapper", "wreath", "wren", "wriggle",
    "wrist", "yard", "yellow", "yodel", "yonder", "zebra", "zigzag", "zipper",
};
// clang-format on

} // namespace

const std::array<std::string_view, joinWordCount> &joinWords()
{
    return all;
}

std::optional<std::size_t> joinWordAt(std::string_view word)
{
    const auto found = std::ranges::lower_bound(all, word);
    if (found == all.end() || !found->starts_with(word) ||
        (word.size() < tellingLetters && word != *found))
        return std::nullopt;
    return static_cast<std::size_t>(found - all.begin());
}

} // namespace lidlark::sync
