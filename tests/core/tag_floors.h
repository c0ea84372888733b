#pragma once

#include <QTest>

#include <utility>

/// Rows "tag", "floor" for a data function: the floors that tags carry.
/// Source: activities.md 1.4, column Rule, copied by hand.
inline void addTagFloorRows()
{
    QTest::addColumn<QString>("tag");
    QTest::addColumn<int>("floor");
    const std::pair<const char *, int> floors[] = {
        {"SMALL", 36}, {"BALLOON", 60}, {"ELASTIC", 60}, {"BAND", 48}, {"CORD", 36},
        {"SHARP", 36}, {"COIN", 48},    {"FOAM", 36},    {"FOIL", 36}, {"STRAW", 48},
        {"DOUGH", 24}, {"STICKER", 30}, {"FORK", 30}};
    for (const auto &[tag, floor] : floors)
        QTest::newRow(tag) << tag << floor;
}
