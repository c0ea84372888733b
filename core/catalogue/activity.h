#pragma once

#include "core/base/id.h"
#include "core/catalogue/grading_fact.h"
#include "core/catalogue/item_kind.h"
#include "core/catalogue/review.h"
#include "core/catalogue/skill.h"
#include "core/catalogue/tag.h"
#include "core/catalogue/words_origin.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::catalogue {

enum class Status { Draft, AwaitingReview, Reviewed, Withdrawn };
inline constexpr EnumNames<Status, 4> statusNames{
    {"draft", "awaiting-review", "reviewed", "withdrawn"}};

enum class Role { Must, Nice, InsteadOf };
inline constexpr EnumNames<Role, 3> roleNames{{"must", "nice", "instead-of"}};

enum class Fate { ComesBack, UsedUp, PartUsed };
inline constexpr EnumNames<Fate, 3> fateNames{{"comes-back", "used-up", "part-used"}};

enum class Effect { Alerting, Settling, Either };
inline constexpr EnumNames<Effect, 3> effectNames{{"alerting", "settling", "either"}};

enum class Sense { Proprioception, Tactile, Vestibular, Visual, Sound, Oral, Smell };
inline constexpr EnumNames<Sense, 7> senseNames{
    {"proprioception", "tactile", "vestibular", "visual", "sound", "oral", "smell"}};

enum class Space { Lap, Table, Mat, Room };
inline constexpr EnumNames<Space, 4> spaceNames{{"lap", "table", "mat", "room"}};

enum class Sound { Quiet, Ordinary, Loud };
inline constexpr EnumNames<Sound, 3> soundNames{{"quiet", "ordinary", "loud"}};

/// Ordered from the loosest to the closest, so that the larger of two is the safer.
enum class Supervision { Near, Reach, Beside };
inline constexpr EnumNames<Supervision, 3> supervisionNames{{"near", "reach", "beside"}};

enum class Energy { Low, Medium, High };
inline constexpr EnumNames<Energy, 3> energyNames{{"low", "medium", "high"}};

enum class Position { Lap, Chair, Wheelchair, Floor, SideLying, Standing };
inline constexpr EnumNames<Position, 6> positionNames{
    {"lap", "chair", "wheelchair", "floor", "side-lying", "standing"}};

enum class Words { None, Few, Many };
inline constexpr EnumNames<Words, 3> wordsNames{{"none", "few", "many"}};

enum class Lever {
    Size,
    Resistance,
    Speed,
    Distance,
    Steps,
    Support,
    Position,
    Hand,
    Memory,
    Choice
};
inline constexpr EnumNames<Lever, 10> leverNames{{"size", "resistance", "speed", "distance",
                                                  "steps", "support", "position", "hand", "memory",
                                                  "choice"}};

enum class View { Hands, WholeBody };
inline constexpr EnumNames<View, 2> viewNames{{"hands", "whole body"}};

enum class Claim { Play, Customary, Supported };
inline constexpr EnumNames<Claim, 3> claimNames{{"play", "customary", "supported"}};

/// Getting out, playing, putting back: three honest numbers, whole minutes.
struct Minutes {
    int out = 1;
    int play = 5;
    int back = 1;

    [[nodiscard]] int total() const { return out + play + back; }
    bool operator==(const Minutes &) const = default;
};

struct Picture {
    std::string drawing; ///< Name of the drawing without ".svg".
    std::string alt;     ///< What it shows, for whoever cannot see it.
};

struct Step {
    std::string text;
    std::optional<Picture> picture; ///< Absent: the activity's picture stays.
};

struct ItemUse {
    ItemId item;
    int quantity = 1;
    Source source = Source::Box;
    Role role = Role::Must;
    Fate fate = Fate::ComesBack;
    int countBack = 0; ///< Pieces to count home; 0 when it is used up.
    bool operator==(const ItemUse &) const = default;
};

struct Grading {
    Lever lever = Lever::Support;
    std::string text;
    std::optional<GradingFact> fact; ///< Absent: nothing in it that physics decides.
};

/// How many lines `items` and `swaps` of an activity may have. The gate tries every way of
/// swapping: at most 64 of them.
inline constexpr int itemLimit = 10;
inline constexpr int swapLimit = 6;

/// How the activity is played with another item in an item's place.
struct ActivitySwap {
    ItemId item;
    ItemId with;
    TagSet cautions;        ///< At least all tags of `with`.
    int ageFloorMonths = 0; ///< Where the swap asks for more than the activity; 0: it does not.
    std::string text;
};

/// A piece that comes into being while playing: a snip, a foil pebble, a crumb. Torn or soft ones
/// are measured as if they were stiff.
struct MadePiece {
    std::string name; ///< "snips".
    ItemId of;        ///< What it is made of.
    std::optional<measure::Solid> solid;
};

/// Notes for other ways of taking part; empty text: none written.
struct WaysIn {
    std::string oneHand;
    std::string seated;
    std::string lowVision;
    std::string noSpeech;
    std::string tiresFast;
};

/// About five minutes of shared play (activities.md 1.1).
struct Activity {
    ActivityId id;
    std::string entry; ///< Number in the first eighty, "A39".
    int version = 1;
    Status status = Status::Draft;
    std::vector<Review> reviews; ///< One a language at most.
    std::string name;
    std::string invite;    ///< What the child hears; at most 12 words.
    std::string adultLine; ///< What the adult does first; at most 25 words.
    Picture picture;
    std::vector<Step> steps; ///< 2 to 4.
    Minutes minutes;
    std::vector<ItemUse> items;
    std::vector<Skill> skillsMain; ///< 1 or 2; the first is the family.
    std::vector<Skill> skillsAlso; ///< 0 to 2.
    std::vector<LifeArea> lifeAreas;
    int ageFloorMonths = 0;
    std::string floorReason;
    Effect effect = Effect::Either;
    std::vector<Sense> senses;
    int mess = 0; ///< 0 none, 1 wipe, 2 wash.
    Space space = Space::Table;
    Sound sound = Sound::Quiet;
    Supervision supervision = Supervision::Beside;
    int hands = 2;
    Energy energy = Energy::Low;
    std::vector<Position> positions;
    Words wordsNeeded = Words::Few;
    std::vector<Grading> easier;
    std::vector<Grading> harder;
    WaysIn waysIn;
    std::optional<std::vector<MadePiece>> makes; ///< Absent: the file does not say.
    TagSet madeTags; ///< What the measures of `makes` say; the loader sets it.
    TagSet cautions;
    std::vector<std::string> watchFor;
    std::vector<std::string> stopWhen;
    std::vector<std::string> say;
    std::vector<std::string> putBack;
    bool noBox = false;
    bool videoOk = true;
    View view = View::Hands;
    Claim claim = Claim::Play;
    std::vector<ActivitySwap> swaps;
    WordsOrigin wordsOrigin = WordsOrigin::Ours;
    /// The entry in English, where its words are a translation; null: they are English.
    std::shared_ptr<const Activity> inEnglish = nullptr;

    [[nodiscard]] Skill family() const { return skillsMain.front(); }
    [[nodiscard]] bool usesBox() const
    {
        for (const ItemUse &use : items) {
            if (use.source == Source::Box)
                return true;
        }
        return false;
    }
};

} // namespace lidlark::catalogue
