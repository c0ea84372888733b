#pragma once

#include "core/base/id.h"
#include "core/child/child.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::child {

enum class Answer { Unanswered, Yes, No };
inline constexpr EnumNames<Answer, 3> answerNames{{"unanswered", "yes", "no"}};

enum class PersonKind { Child, Adult };
inline constexpr EnumNames<PersonKind, 2> personKindNames{{"child", "adult"}};

/// Somebody who lives in the home or visits it.
struct Person {
    PersonId id;
    std::string alias;
    PersonKind kind = PersonKind::Child;
    std::optional<Age> age;             ///< Children; unknown counts as under three.
    Answer mouths = Answer::Unanswered; ///< "Puts things in the mouth"; unanswered counts as yes
                                        ///< under 36 months.
    bool pica = false;                  ///< Noted by the therapist or a parent.
    bool visits = false;                ///< Comes and goes; lives elsewhere.
    bool operator==(const Person &) const = default;
};

/// What anybody in the home must avoid. Yes of one person is yes of the home.
struct Avoidances {
    Answer latex = Answer::Unanswered;
    Answer wheat = Answer::Unanswered; ///< Wheat allergy.
    Answer coeliac = Answer::Unanswered;
    Answer milk = Answer::Unanswered;
    std::string others; ///< In the family's words; shown beside household containers.
    /// Spina bifida, many operations, or a reaction to banana, avocado, kiwi or chestnut: latex is
    /// avoided as with an allergy (safety.md LA-01, LA-02; activities.md 1.4, LATEX).
    Answer latexRisk = Answer::Unanswered;
    /// Of the plain allergens (core/catalogue/allergen.h), by name. Absent: nobody has said.
    std::map<std::string, Answer> more = {};
    bool operator==(const Avoidances &) const = default;
};

/// Flags only the therapist sets, about the playing child.
struct MedicalFlags {
    bool seizureShuntOrNeck = false;
    bool heartLungOrShunt = false;
    bool jointOrHeart = false;
    bool mouthOrSwallowing = false; ///< After mouth or face surgery, or swallowing unsafe.
    bool brokenSkin = false;
    bool avoidScent = false; ///< Eczema, asthma or a scent dislike.
    bool soundSensitive = false;
    bool operator==(const MedicalFlags &) const = default;
};

/// A lower floor for one activity, for skill reasons. It ends when the activity's version rises
/// (events.md 8.3), and no tag's own floor gives way to it (activities.md 2.1.3).
struct LoweredFloor {
    int months = 0;
    int version = 0; ///< Of the activity for which it was said.
    bool operator==(const LoweredFloor &) const = default;
};

/// What the therapist has allowed for this home, until withdrawn.
struct Permissions {
    bool spin = false;
    bool breath = false;
    bool lift = false;
    bool straw = false;
    /// Why small parts may be in this home although a small child lives here: "asleep or out, high
    /// storage". Empty: not recorded.
    std::string smallWhenAway;
    std::map<ActivityId, LoweredFloor> floors = {};
    bool operator==(const Permissions &) const = default;
};

/// One home: who lives there, what it avoids, what it has (design.md 1).
struct HomeSheet {
    HomeId id;
    std::string name;           ///< "Mum's".
    std::vector<Person> people; ///< The playing child is among them, by the child's id as PersonId.
    Avoidances avoidances;
    MedicalFlags flags;
    Permissions permissions;
    Answer likesTouch = Answer::Unanswered;
    bool pets = false;
    bool highStorage = false;
    std::vector<ItemId> missingExtras; ///< Household extras this home does not have.
    std::optional<int> bedtimeMinute;  ///< Local minute of the day; absent: 18:30 (checkin.md 4).
    bool reviewedOnly = false;         ///< The therapist shows reviewed entries only.
    std::string emergencyNumber = {};  ///< As the family entered it; empty: not entered (EM-05).
    std::string poisonLine = {};
    bool operator==(const HomeSheet &) const = default;
};

} // namespace lidlark::child
