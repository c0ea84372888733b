#include "builds_view_model.h"

#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void BuildsViewModel::setHousehold(Household *household)
{
    m_household = household;
    m_new.day = household->today().day;
    connect(household, &Household::changed, this, &BuildsViewModel::load);
    load();
}

void BuildsViewModel::load()
{
    renewRows([this] { readRows(); });
    emit loaded();
}

void BuildsViewModel::readRows()
{
    m_rows.clear();
    m_designs = static_cast<int>(designsOn(*m_household).size());
    const auto builds = usecase::keptBuilds(m_household->workplace());
    if (!builds) {
        m_problem = m_household->sentenceFor(builds.error());
        return;
    }
    for (const store::BuildRow &build : *builds) {
        const auto table = usecase::packTable(m_household->workplace(), build.id);
        m_rows.push_back({build, table ? table->ready() : 0});
    }
}

QStringList BuildsViewModel::rowKeys() const
{
    QStringList keys;
    for (const Row &row : m_rows)
        keys.append(fromCore(row.build.id.value));
    return keys;
}

int BuildsViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant BuildsViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case BuildIdRole:
        return fromCore(row.build.id.value);
    case NameRole:
        return fromCore(row.build.name);
    case NoteRole:
        return tr("%1. Boxes: %2. Ready: %3.")
            .arg(dateOf(row.build.day), numerals(row.build.boxes), numerals(row.ready));
    default:
        return {};
    }
}

QHash<int, QByteArray> BuildsViewModel::roleNames() const
{
    return {{BuildIdRole, "buildId"}, {NameRole, "name"}, {NoteRole, "note"}};
}

QString BuildsViewModel::dayWords() const
{
    return m_household != nullptr ? dateOf(m_new.day) : QString();
}

void BuildsViewModel::setSpares(int percent)
{
    m_new.sparesPercent = percent;
    emit loaded();
}

void BuildsViewModel::moveDay(int days)
{
    m_new.day = m_new.day + days;
    emit loaded();
}

QString BuildsViewModel::start(const QString &name, const QString &currency)
{
    m_new.name = toCore(name);
    m_new.currency = toCore(currency.trimmed().toUpper());
    const auto id = usecase::startBuild(m_household->workplace(), m_new);
    m_problem = id ? QString() : m_household->sentenceFor(id.error());
    if (id)
        m_household->announce();
    emit loaded();
    return id ? fromCore(id->value) : QString();
}

} // namespace lidlark::mobile
