#pragma once

#include "core/rotation/candidate.h"
#include "core/rotation/menu.h"

#include <array>

namespace lidlark::rotation {

inline constexpr std::size_t kiteRoleCount = 3;

/// Which of the state's three first offers (checkin.md 4, numbered 1 to 3 there) an entry could be.
using KiteRoles = std::array<bool, kiteRoleCount>;

/// - resting: 1 alerting, short, few words (for a child who tires fast: low in energy); 2 strong
///   push and pull (either); 3 a known friend, seated, one hand free;
/// - steady: 1 linked to a goal; 2 new or less played; 3 a known friend;
/// - whirling: 1 push and pull (either); 2 a big slow or breath entry (settling); 3 a settling
/// known
///   friend with few pieces;
/// - clouds: 1 a known friend; 2 an either entry; 3 one without a table.
/// None without a check-in, with the bag, and for an entry that the kite's rules hold back.
KiteRoles kiteRolesOf(const Candidate &candidate, const Question &question);

/// The check-in's fit in tenths, 0 to 30: 3 points for the first two roles, 2 for the third.
int kiteFitOf(const KiteRoles &roles);

/// Tenths for each role that at least one of the offers fills, so that the three are different
/// answers to the kite and not one answer three times.
inline constexpr int kiteRoleBonus = 20;

} // namespace lidlark::rotation
