#include "own_list_view_model.h"

#include "mobile/bridge/small_drawing.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int mostModels = 12; ///< As many as somebody looks through.

} // namespace

Result<std::vector<OwnOnDesk>> OwnListViewModel::desk(Household &household) const
{
    return ownActivities(household);
}

QString OwnListViewModel::nameOf(const OwnOnDesk &row) const
{
    return row.name.isEmpty() ? tr("Without a name yet") : row.name;
}

QString OwnListViewModel::noteOf(const OwnOnDesk &row) const
{
    const QString names = row.children.join(QStringLiteral(", "));
    if (row.children.isEmpty())
        return row.signedOff ? tr("Ready, and in no box yet") : tr("A draft");
    if (row.newer)
        return tr("In the box of %1, in older words").arg(names);
    return tr("In the box of %1").arg(names);
}

QString OwnListViewModel::start(const QString &from)
{
    const auto id = startOwn(*household(), from);
    setProblem(id ? QString() : household()->sentenceFor(id.error()));
    emit loaded();
    return id ? *id : QString();
}

QStringList OwnListViewModel::models(const QString &words) const
{
    QStringList ids;
    if (household() == nullptr)
        return ids;
    for (const catalogue::Activity &activity : household()->catalogue().activities()) {
        const bool ours = !catalogue::isOwnId(activity.id.value);
        if (ours && ids.size() < mostModels &&
            fromCore(activity.name).contains(words.trimmed(), Qt::CaseInsensitive))
            ids.append(fromCore(activity.id.value));
    }
    return ids;
}

QString OwnListViewModel::modelName(const QString &activity) const
{
    const auto *known = household()->catalogue().activity({toCore(activity)});
    return known != nullptr ? fromCore(known->name) : activity;
}

QString OwnListViewModel::modelDrawing(const QString &activity) const
{
    const auto *known = household()->catalogue().activity({toCore(activity)});
    return known != nullptr ? smallDrawingOf(*known, household()->catalogue()) : QString();
}

} // namespace lidlark::mobile
