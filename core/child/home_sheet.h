#pragma once

#include "core/base/id.h"
#include "core/child/child.h"

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

/// What the therapist has allowed for this home, until withdrawn.
struct Permissions {
    bool spin = false;
    bool breath = false;
    bool lift = false;
    bool straw = false;
    /// Why small parts may be in this home although a small child lives here: "asleep or out, high
    /// storage". Empty: not recorded.
    std::string smallWhenAway;
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
    std::string emergencyNumber;       ///< As the family typed it; empty: not said (EM-05).
    std::string poisonNumber;          ///< Of the poison line; empty: not said.
    bool reviewedOnly = false;         ///< The therapist shows reviewed entries only.
    bool operator==(const HomeSheet &) const = default;
};

} // namespace lidlark::child
