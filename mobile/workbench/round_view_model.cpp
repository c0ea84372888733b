#include "round_view_model.h"

#include "core/wording/day_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/workbench_desk.h"

namespace lidlark::mobile {

void RoundViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &RoundViewModel::load);
    load();
}

void RoundViewModel::load()
{
    const auto round = roundOf(*m_household);
    m_problem = round ? QString() : m_household->sentenceFor(round.error());
    renewRows([&] {
        m_rows.clear();
        if (!round)
            return;
        for (const usecase::RoundItem &item : round->items) {
            for (const usecase::RoundLine &line : item.lines)
                m_rows.push_back({item.item, line, item.piecesToPack()});
        }
    });
    emit loaded();
}

QStringList RoundViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_rows.size()));
    for (const Row &row : m_rows)
        keys.append(fromCore(row.item.value + "/" + row.line.child));
    return keys;
}

int RoundViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QString RoundViewModel::noteOf(const Row &row) const
{
    const usecase::RoundLine &line = row.line;
    const QString pieces = numerals(tr("%n pieces", nullptr, line.pieces));
    if (line.askedBy.empty())
        return pieces;
    return tr("%1, asked for by %2, %3")
        .arg(pieces, isolated(fromCore(line.askedBy)),
             translated(wording::dayWords(line.asked.day, m_household->today().day)));
}

QVariant RoundViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    const Row &row = m_rows[at];
    const catalogue::ItemKind *kind = m_household->catalogue().item(row.item);
    const bool first = at == 0 || m_rows[at - 1].item != row.item;
    switch (role) {
    case ItemIdRole:
        return fromCore(row.item.value);
    case HeadingRole:
        return first ? capitalised(fromCore(kind != nullptr ? kind->name : row.item.value))
                     : QString();
    case TotalRole:
        return row.toPack > 0 ? numerals(tr("%n to pack", nullptr, row.toPack)) : tr("all packed");
    case DrawingRole:
        return fromCore(kind != nullptr ? kind->drawing : std::string());
    case ChildRole:
        return fromCore(row.line.child);
    case NoteRole:
        return noteOf(row);
    case PackedRole:
        return row.line.packed;
    default:
        return {};
    }
}

QHash<int, QByteArray> RoundViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},   {HeadingRole, "heading"}, {TotalRole, "total"},
            {DrawingRole, "drawing"}, {ChildRole, "child"},     {NoteRole, "note"},
            {PackedRole, "packed"}};
}

void RoundViewModel::pack(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    const Row packed = m_rows[static_cast<std::size_t>(row)];
    const Outcome done = packFor(*m_household, fromCore(packed.line.child), packed.item);
    if (done) {
        m_household->announce();
        return;
    }
    m_problem = m_household->sentenceFor(done.error());
    emit loaded();
}

} // namespace lidlark::mobile
