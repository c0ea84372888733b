#include "own_list_view_model.h"

#include "mobile/bridge/small_drawing.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int mostModels = 12; ///< As many as somebody looks through.

} // namespace

void OwnListViewModel::setHousehold(Household *household)
{
    m_household = household;
    if (household == nullptr)
        return;
    connect(household, &Household::changed, this, &OwnListViewModel::load);
    load();
}

void OwnListViewModel::load()
{
    if (m_household == nullptr || !m_household->isOpen())
        return;
    renewRows([this] {
        auto desk = ownActivities(*m_household);
        m_problem = desk ? QString() : m_household->sentenceFor(desk.error());
        m_rows = desk ? *std::move(desk) : std::vector<OwnOnDesk>();
    });
    emit loaded();
}

int OwnListViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QString OwnListViewModel::noteOf(const OwnOnDesk &row)
{
    const QString names = row.children.join(QStringLiteral(", "));
    if (row.children.isEmpty())
        return row.signedOff ? tr("Ready, and in no box yet") : tr("A draft");
    if (row.newer)
        return tr("In the box of %1, in older words").arg(names);
    return tr("In the box of %1").arg(names);
}

QVariant OwnListViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const OwnOnDesk &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case EntryRole:
        return row.id;
    case NameRole:
        return row.name.isEmpty() ? tr("Without a name yet") : row.name;
    case DrawingRole:
        return row.drawing;
    case NoteRole:
        return noteOf(row);
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnListViewModel::roleNames() const
{
    return {{EntryRole, "entry"}, {NameRole, "name"}, {DrawingRole, "drawing"}, {NoteRole, "note"}};
}

QStringList OwnListViewModel::rowKeys() const
{
    QStringList keys;
    for (const OwnOnDesk &row : m_rows)
        keys.append(row.id);
    return keys;
}

QString OwnListViewModel::start(const QString &from)
{
    const auto id = startOwn(*m_household, from);
    m_problem = id ? QString() : m_household->sentenceFor(id.error());
    emit loaded();
    return id ? *id : QString();
}

QStringList OwnListViewModel::models(const QString &words) const
{
    QStringList ids;
    if (m_household == nullptr)
        return ids;
    for (const catalogue::Activity &activity : m_household->catalogue().activities()) {
        const bool ours = !catalogue::isOwnId(activity.id.value);
        if (ours && ids.size() < mostModels &&
            fromCore(activity.name).contains(words.trimmed(), Qt::CaseInsensitive))
            ids.append(fromCore(activity.id.value));
    }
    return ids;
}

QString OwnListViewModel::nameOf(const QString &activity) const
{
    const auto *known = m_household->catalogue().activity({toCore(activity)});
    return known != nullptr ? fromCore(known->name) : activity;
}

QString OwnListViewModel::drawingOf(const QString &activity) const
{
    const auto *known = m_household->catalogue().activity({toCore(activity)});
    return known != nullptr ? smallDrawingOf(*known, m_household->catalogue()) : QString();
}

} // namespace lidlark::mobile
