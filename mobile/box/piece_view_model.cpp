#include "piece_view_model.h"

#include "core/wording/freshness_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>
#include <array>

namespace lidlark::mobile {

namespace {

/// In the order of `openedChoices`; the choice after them is "not opened".
constexpr std::array daysAgo{0, 1, 3, 7};
/// In the order of `keepChoices`; the choice after them is no limit of the family's own.
constexpr std::array keptDays{7, 14, 30};
constexpr int notOpened = static_cast<int>(daysAgo.size());

} // namespace

QStringList PieceViewModel::openedChoices()
{
    return {tr("today"), tr("yesterday"), tr("3 days ago"), tr("a week ago"), tr("not opened")};
}

QStringList PieceViewModel::keepChoices()
{
    return {tr("a week"), tr("two weeks"), tr("a month"), tr("no limit of ours")};
}

int PieceViewModel::keepChoice() const
{
    if (!m_keepsDays)
        return static_cast<int>(keptDays.size());
    const auto *found = std::find(keptDays.begin(), keptDays.end(), *m_keepsDays);
    return found == keptDays.end() ? -1 : static_cast<int>(found - keptDays.begin());
}

void PieceViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &PieceViewModel::load);
    load();
}

QString PieceViewModel::itemId() const
{
    return fromCore(m_item.value);
}

void PieceViewModel::setItemId(const QString &itemId)
{
    m_item = {toCore(itemId)};
    load();
}

void PieceViewModel::load()
{
    if (m_household == nullptr || m_item.empty())
        return;
    renewRows([this] { readRows(); });
    emit loaded();
}

void PieceViewModel::readRows()
{
    const auto item = m_household->boxItem(m_item);
    const bool perishable = item && item->kind != nullptr && item->kind->isPerishable();
    m_keepsDays = item ? item->row.care.keepsDays : std::nullopt;
    m_pieces = perishable ? item->freshness.pieces : std::vector<box::PieceFreshness>();
}

QStringList PieceViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_pieces.size()));
    for (const box::PieceFreshness &row : m_pieces)
        keys.append(fromCore(row.id.value));
    return keys;
}

int PieceViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_pieces.size());
}

int PieceViewModel::choiceOf(const box::PieceFreshness &piece) const
{
    if (!piece.opened)
        return notOpened;
    const int ago = m_household->today().day - *piece.opened;
    const auto *found = std::find(daysAgo.begin(), daysAgo.end(), ago);
    return found == daysAgo.end() ? -1 : static_cast<int>(found - daysAgo.begin());
}

QVariant PieceViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const box::PieceFreshness &piece = m_pieces[static_cast<std::size_t>(index.row())];
    switch (role) {
    case WordsRole:
        return safetyText(wording::pieceWords(piece, m_household->today().day));
    case OpenedRole:
        return piece.opened.has_value();
    case PastDateRole:
        return piece.state == box::PieceState::PastDate;
    case ChoiceRole:
        return choiceOf(piece);
    default:
        return {};
    }
}

QHash<int, QByteArray> PieceViewModel::roleNames() const
{
    return {{WordsRole, "words"},
            {OpenedRole, "opened"},
            {PastDateRole, "pastDate"},
            {ChoiceRole, "choice"}};
}

void PieceViewModel::chooseOpened(int row, int choice)
{
    if (row < 0 || row >= rowCount() || choice < 0 || choice > notOpened)
        return;
    std::optional<Day> day;
    if (choice < notOpened)
        day = m_household->today().day - daysAgo[static_cast<std::size_t>(choice)];
    report(m_household->noteOpened(m_item, m_pieces[static_cast<std::size_t>(row)].id, day));
}

void PieceViewModel::leftOpen(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    report(m_household->noteLeftOpen(m_item, m_pieces[static_cast<std::size_t>(row)].id));
}

void PieceViewModel::chooseKeep(int choice)
{
    if (choice < 0 || choice > static_cast<int>(keptDays.size()))
        return;
    std::optional<int> days;
    if (choice < static_cast<int>(keptDays.size()))
        days = keptDays[static_cast<std::size_t>(choice)];
    report(m_household->setKeepingLimit(m_item, days));
}

void PieceViewModel::report(const Outcome &outcome)
{
    m_problem = outcome ? QString() : m_household->sentenceFor(outcome.error());
    if (outcome)
        m_household->announce();
    else
        emit loaded();
}

} // namespace lidlark::mobile
