#pragma once

#include "ink_item.h"

namespace lidlark::design {

/// A piece of washing line: taut at its ends, pulled down a little in the middle by what hangs
/// there.
class Rope : public lidlark::design::InkItem
{
    Q_OBJECT
    QML_ELEMENT
public:
    using InkItem::InkItem;

    void paint(QPainter *painter) override;
};

} // namespace lidlark::design
