#include "tend_view_model.h"

#include "core/wording/tend_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

using workbench::Care;
using workbench::Standing;

void TendViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &TendViewModel::load);
    load();
}

QString TendViewModel::code() const
{
    return fromCore(m_code);
}

void TendViewModel::setCode(const QString &code)
{
    m_code = toCore(code);
    m_problem.clear();
    if (m_household != nullptr)
        load();
}

void TendViewModel::load()
{
    renewRows([this] { readRows(); });
    if (rowCount() > 0)
        emit dataChanged(index(0), index(rowCount() - 1));
    emit loaded();
}

void TendViewModel::readCodes()
{
    m_codes.clear();
    const auto boxes = usecase::knownBoxes(m_household->workplace());
    if (!boxes) {
        m_problem = m_household->sentenceFor(boxes.error());
        return;
    }
    for (const auto &[code, standing] : *boxes) {
        if (standing != Standing::Retired)
            m_codes.append(fromCore(code));
    }
    if (!m_codes.contains(fromCore(m_code)))
        m_code = m_codes.isEmpty() ? std::string() : toCore(m_codes.front());
}

void TendViewModel::readRows()
{
    m_items.clear();
    m_box = {};
    readCodes();
    if (m_code.empty())
        return;
    const auto box = usecase::tendedBox(m_household->workplace(), m_code);
    if (!box) {
        m_problem = m_household->sentenceFor(box.error());
        return;
    }
    m_box = *box;
    if (m_box.status.standing != Standing::Returned)
        return;
    for (const auto &[item, pieces] : m_box.status.pieces)
        m_items.push_back(item);
    std::ranges::stable_sort(m_items, {}, [this](const ItemId &item) {
        return workbench::careFor(m_household->catalogue().item(workbench::kindOf(item)));
    });
}

QStringList TendViewModel::rowKeys() const
{
    QStringList keys;
    for (const ItemId &item : m_items)
        keys.append(fromCore(m_code) + u'/' + fromCore(item.value));
    return keys;
}

int TendViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_items.size());
}

QVariant TendViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const ItemId &item = m_items[static_cast<std::size_t>(index.row())];
    const auto tended = m_box.status.tended.find(item);
    switch (role) {
    case ItemIdRole:
        return fromCore(item.value);
    case NameRole:
        return packingName(packingNames(*m_household), item);
    case DrawingRole:
        return clinicDrawing(*m_household, item);
    case ReplaceRole:
        return workbench::careFor(m_household->catalogue().item(workbench::kindOf(item))) ==
               Care::Replace;
    case DoneRole:
        return std::ranges::find(m_box.left, item, &workbench::StillToDo::item) == m_box.left.end();
    case StateRole:
        return tended == m_box.status.tended.end()
                   ? QString()
                   : translated(wording::tendedWords(tended->second, m_household->today().day));
    default:
        return {};
    }
}

QHash<int, QByteArray> TendViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},   {NameRole, "name"}, {DrawingRole, "drawing"},
            {ReplaceRole, "replace"}, {DoneRole, "done"}, {StateRole, "stateWords"}};
}

QString TendViewModel::standingWords() const
{
    return m_code.empty()
               ? QString()
               : translated(wording::standingWords(m_box.status, m_household->today().day));
}

bool TendViewModel::withChild() const
{
    return !m_code.empty() && m_box.status.standing == Standing::Issued;
}

bool TendViewModel::returned() const
{
    return !m_code.empty() && m_box.status.standing == Standing::Returned;
}

QString TendViewModel::firstWords() const
{
    if (!returned())
        return {};
    const auto words = wording::firstTend(m_box.left, packingNames(*m_household));
    return words ? safetyText(*words) : QString();
}

usecase::BoxTending TendViewModel::tendingAt(int row) const
{
    return {m_code, m_items[static_cast<std::size_t>(row)], {}, std::nullopt};
}

void TendViewModel::takeBack()
{
    answer(usecase::takeBoxBack(m_household->workplace(), m_code));
}

void TendViewModel::clean(int row, const QString &how)
{
    const auto known = workbench::cleanedHowNames.parse(toCore(how));
    if (row >= 0 && row < rowCount() && known)
        answer(usecase::cleanItem(m_household->workplace(), tendingAt(row), *known));
}

void TendViewModel::replace(int row, const QString &lot)
{
    if (row >= 0 && row < rowCount())
        answer(usecase::replaceItem(m_household->workplace(), tendingAt(row), toCore(lot)));
}

void TendViewModel::untend(int row)
{
    if (row >= 0 && row < rowCount())
        answer(usecase::untendItem(m_household->workplace(), tendingAt(row)));
}

void TendViewModel::retire()
{
    answer(usecase::retireBox(m_household->workplace(), m_code, {}));
}

void TendViewModel::answer(const Outcome &outcome)
{
    m_problem = clinicAnswer(*m_household, outcome);
    emit loaded();
}

} // namespace lidlark::mobile
