#include "parcel_view_model.h"

#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/workbench_desk.h"

namespace lidlark::mobile {

void ParcelViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &ParcelViewModel::load);
    load();
}

void ParcelViewModel::load()
{
    auto round = roundOf(*m_household);
    m_problem = round ? QString() : m_household->sentenceFor(round.error());
    renewRows([&] { m_rows = round ? std::move(round->boxes) : std::vector<usecase::RoundBox>(); });
    emit loaded();
}

QStringList ParcelViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_rows.size()));
    for (const usecase::RoundBox &row : m_rows)
        keys.append(fromCore(row.child));
    return keys;
}

int ParcelViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant ParcelViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const usecase::RoundBox &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ChildRole:
        return fromCore(row.child);
    case NoteRole:
        return tr("%1 packed, %2 to pack").arg(numerals(row.packed), numerals(row.toPack));
    case ByPostRole:
        return row.way == usecase::Way::Post;
    case PackedRole:
        return row.packed;
    default:
        return {};
    }
}

QHash<int, QByteArray> ParcelViewModel::roleNames() const
{
    return {
        {ChildRole, "child"}, {NoteRole, "note"}, {ByPostRole, "byPost"}, {PackedRole, "packed"}};
}

void ParcelViewModel::goByPost(int row, bool post)
{
    if (row >= 0 && row < rowCount())
        report(goBy(*m_household, fromCore(m_rows[static_cast<std::size_t>(row)].child),
                    post ? usecase::Way::Post : usecase::Way::Visit));
}

void ParcelViewModel::send(int row)
{
    if (row >= 0 && row < rowCount())
        report(sendOff(*m_household, fromCore(m_rows[static_cast<std::size_t>(row)].child)));
}

void ParcelViewModel::report(const Outcome &outcome)
{
    if (outcome) {
        m_household->announce();
        return;
    }
    m_problem = m_household->sentenceFor(outcome.error());
    emit loaded();
}

} // namespace lidlark::mobile
