#include "mobile/bridge/kite_tap.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr std::int64_t changeableForMs = 60'000; // checkin.md 6

} // namespace

bool KiteTap::changeableAt(std::int64_t nowMs) const
{
    const std::int64_t ago = nowMs - tappedMs;
    return pairOpen && tappedMs > 0 && ago >= 0 && ago < changeableForMs;
}

QJsonObject toJson(const KiteTap &tap)
{
    QJsonObject object{
        {QStringLiteral("id"), fromCore(tap.entry.id)},
        {QStringLiteral("child"), fromCore(tap.entry.child.value)},
        {QStringLiteral("before"), fromCore(checkin::kiteNames.of(tap.entry.before))},
        {QStringLiteral("by"), fromCore(checkin::shownByNames.of(tap.entry.shownBy))},
        {QStringLiteral("pair-open"), tap.pairOpen}};
    if (tap.entry.after) {
        object.insert(QStringLiteral("after"), fromCore(checkin::kiteNames.of(*tap.entry.after)));
        object.insert(QStringLiteral("activity"), fromCore(tap.entry.activity.value));
    }
    return object;
}

std::optional<KiteTap> kiteTapFrom(const QJsonObject &object)
{
    const auto text = [&object](QLatin1String field) { return toCore(object[field].toString()); };
    const auto before = checkin::kiteNames.parse(text(QLatin1String("before")));
    const auto by = checkin::shownByNames.parse(text(QLatin1String("by")));
    KiteTap tap;
    tap.entry.id = text(QLatin1String("id"));
    if (!before || !by || tap.entry.id.empty())
        return std::nullopt;
    tap.entry.child = {text(QLatin1String("child"))};
    tap.entry.before = *before;
    tap.entry.shownBy = *by;
    tap.entry.after = checkin::kiteNames.parse(text(QLatin1String("after")));
    tap.entry.activity = {text(QLatin1String("activity"))};
    tap.pairOpen = object[QStringLiteral("pair-open")].toBool();
    return tap;
}

} // namespace lidlark::mobile
