#include "request_view_model.h"

#include "item_words.h"

#include "core/wording/request_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

bool isOpen(const usecase::BoxItem &item)
{
    return item.request && item.request->isOpen();
}

constexpr auto lastStep = static_cast<int>(box::RequestStep::CountedIn);

} // namespace

void RequestViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &RequestViewModel::load);
    load();
}

QString RequestViewModel::itemId() const
{
    return fromCore(m_item.value);
}

void RequestViewModel::setItemId(const QString &itemId)
{
    m_item = {toCore(itemId)};
    load();
}

void RequestViewModel::load()
{
    if (m_household == nullptr)
        return;
    renewRows([this] { readRows(); });
    emit loaded();
}

void RequestViewModel::readRows()
{
    m_rows = m_household->boxItems();
    std::erase_if(m_rows, [this](const usecase::BoxItem &item) {
        if (!m_item.empty())
            return item.row.item != m_item;
        return !isOpen(item) && !isLow(item);
    });
    std::stable_sort(m_rows.begin(), m_rows.end(),
                     [](const auto &a, const auto &b) { return isOpen(a) && !isOpen(b); });
}

QStringList RequestViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_rows.size()));
    for (const usecase::BoxItem &row : m_rows)
        keys.append(fromCore(row.row.item.value));
    return keys;
}

int RequestViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RequestViewModel::asked() const
{
    return static_cast<int>(std::count_if(m_rows.begin(), m_rows.end(), isOpen));
}

QStringList RequestViewModel::steps()
{
    QStringList words;
    for (int step = 0; step <= lastStep; ++step)
        words.append(translated(wording::requestStepWord(static_cast<box::RequestStep>(step))));
    return words;
}

QString RequestViewModel::headingOf(int row) const
{
    const bool open = isOpen(m_rows[static_cast<std::size_t>(row)]);
    if (row > 0 && isOpen(m_rows[static_cast<std::size_t>(row - 1)]) == open)
        return {};
    return open ? tr("Asked for") : tr("Running low");
}

QVariant RequestViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const usecase::BoxItem &item = m_rows[static_cast<std::size_t>(index.row())];
    const Day today = m_household->today().day;
    switch (role) {
    case ItemIdRole:
        return fromCore(item.row.item.value);
    case NameRole:
        return itemName(item);
    case DrawingRole:
        return itemDrawing(item);
    case NoteRole:
        return tr("%1 in the box, %2 on the lid list.")
            .arg(countText(item), numerals(item.row.expected));
    case IsOpenRole:
        return isOpen(item);
    case StepRole:
        return item.request ? static_cast<int>(item.request->step) : -1;
    case SaidByRole:
        return item.request ? translated(wording::requestSaidBy(*item.request, today)) : QString();
    case SpokenRole:
        return item.request ? translated(wording::requestLine(*item.request, today)) : QString();
    case MissingRole:
        return missingPieces(item);
    case HeadingRole:
        return headingOf(index.row());
    default:
        return {};
    }
}

QHash<int, QByteArray> RequestViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},  {NameRole, "name"},     {DrawingRole, "drawing"},
            {NoteRole, "note"},      {IsOpenRole, "isOpen"}, {StepRole, "step"},
            {SaidByRole, "saidBy"},  {SpokenRole, "spoken"}, {MissingRole, "missing"},
            {HeadingRole, "heading"}};
}

ItemId RequestViewModel::itemAt(int row) const
{
    return row >= 0 && row < rowCount() ? m_rows[static_cast<std::size_t>(row)].row.item : ItemId{};
}

bool RequestViewModel::ask(int row)
{
    return report(m_household->askFor(itemAt(row)));
}

bool RequestViewModel::move(int row, int step)
{
    if (step < 0 || step >= lastStep)
        return false;
    return report(m_household->moveRequest(itemAt(row), static_cast<box::RequestStep>(step)));
}

bool RequestViewModel::countIn(int row, int pieces)
{
    return report(m_household->countIn(itemAt(row), pieces));
}

bool RequestViewModel::report(const Outcome &outcome)
{
    m_problem = outcome ? QString() : m_household->sentenceFor(outcome.error());
    if (outcome)
        m_household->announce();
    else
        emit loaded();
    return outcome.ok();
}

} // namespace lidlark::mobile
