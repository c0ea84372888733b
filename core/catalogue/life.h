#pragma once

#include <optional>
#include <string>
#include <vector>

namespace lidlark::catalogue {

/// How long a piece lasts, and how people look after it; absent fields are not limited. All numbers
/// of days in the files are our judgement ([P]) but for those activities.md 1.3 or safety.md gives.
struct Life {
    /// Days after opening, or after the first use, before it is thrown away.
    std::optional<int> openedDays;
    /// Days that one evening left open takes from the opened days. Dough: 3 [P]; that wrapped dough
    /// stays soft for longer is common practice, no source.
    std::optional<int> openAirDays;
    std::optional<int> replaceDays; ///< Days after counting in before it is replaced.
    std::optional<int> checkDays;   ///< Days from one look to the next.
    bool checkEachUse = false;      ///< Looked at before every use: a band (safety.md RB-01).
    std::string check;              ///< What to look for, one sentence; empty: nothing to look for.
    /// How to try to bring a dried piece back, a line each. Common practice, no source.
    std::vector<std::string> rescue;
    bool singleUse = false;
    bool operator==(const Life &) const = default;
};

/// What is believed about the speed at which pieces are used up, lost or broken before anything is
/// known of a family: as much as having watched @p pieces go in @p days. Judged, not measured [P].
struct UsePrior {
    int pieces = 1;
    int days = 30;
    bool operator==(const UsePrior &) const = default;
};

} // namespace lidlark::catalogue
