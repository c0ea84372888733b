#pragma once

#include <QString>

#include "core/workbench/supply.h"

#include <string>

namespace lidlark::mobile {

/// How the pages of the shelf say one supply.

/// "24 for £1.50"; without a price: "24, no price yet". @param currency where the offer names none.
QString offerText(const workbench::PackOffer &offer, const std::string &currency);
/// "120 pieces", "None left".
QString piecesText(int pieces);

} // namespace lidlark::mobile
