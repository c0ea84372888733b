#include "pack_table_view_model.h"

#include "core/wording/pack_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

void PackTableViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &PackTableViewModel::load);
    load();
}

QString PackTableViewModel::build() const
{
    return fromCore(m_build.value);
}

void PackTableViewModel::setBuild(const QString &build)
{
    m_build = {toCore(build)};
    if (m_household != nullptr)
        load();
}

void PackTableViewModel::load()
{
    renewRows([this] { readRows(); });
    emit loaded();
}

void PackTableViewModel::readRows()
{
    m_table = {};
    m_problem.clear();
    const auto builds = usecase::keptBuilds(m_household->workplace());
    m_builds = builds ? *builds : std::vector<store::BuildRow>();
    if (!builds)
        m_problem = m_household->sentenceFor(builds.error());
    if (m_build.value.empty() && !m_builds.empty())
        m_build = m_builds.front().id;
    if (m_build.value.empty())
        return;
    const auto table = usecase::packTable(m_household->workplace(), m_build);
    if (table)
        m_table = *table;
    else
        m_problem = m_household->sentenceFor(table.error());
}

QStringList PackTableViewModel::rowKeys() const
{
    QStringList keys;
    for (const workbench::PackBox &box : m_table.boxes)
        keys.append(fromCore(box.code));
    return keys;
}

bool PackTableViewModel::isGone(const std::string &code) const
{
    return m_table.isHandedOver(code);
}

int PackTableViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_table.boxes.size());
}

QVariant PackTableViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const workbench::PackBox &box = m_table.boxes[static_cast<std::size_t>(index.row())];
    switch (role) {
    case CodeRole:
        return fromCore(box.code);
    case WhoseRole:
        return box.whose.empty() ? tr("nobody yet") : fromCore(box.whose);
    case StateRole:
        return isGone(box.code) ? tr("Handed over.") : translated(wording::readyWords(box));
    case SpecialRole:
        return box.special;
    case ReadyRole:
        return box.isReady();
    case GoneRole:
        return isGone(box.code);
    default:
        return {};
    }
}

QHash<int, QByteArray> PackTableViewModel::roleNames() const
{
    return {{CodeRole, "code"},       {WhoseRole, "whose"}, {StateRole, "stateWords"},
            {SpecialRole, "special"}, {ReadyRole, "ready"}, {GoneRole, "gone"}};
}

QString PackTableViewModel::name() const
{
    return fromCore(m_table.build.name);
}

QStringList PackTableViewModel::buildNames() const
{
    QStringList names;
    for (const store::BuildRow &row : m_builds)
        names.append(fromCore(row.name));
    return names;
}

QStringList PackTableViewModel::buildIds() const
{
    QStringList ids;
    for (const store::BuildRow &row : m_builds)
        ids.append(fromCore(row.id.value));
    return ids;
}

QString PackTableViewModel::readyWords() const
{
    return tr("%1 of %2 ready").arg(numerals(m_table.ready()), numerals(rowCount()));
}

} // namespace lidlark::mobile
