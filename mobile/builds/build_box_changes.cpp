#include "build_box_view_model.h"

#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

using workbench::BoxPart;

void BuildBoxViewModel::setHand(const QString &hand)
{
    const auto supplies = usecase::keptSupplies(m_household->workplace());
    workbench::fitHand(m_box,
                       workbench::handNames.parse(toCore(hand)).value_or(workbench::Hand::Unsaid),
                       supplies ? *supplies : workbench::KeptSupplies(), m_household->catalogue());
    tell();
}

void BuildBoxViewModel::fillFor(const QString &child)
{
    const auto filled =
        usecase::refilledFor(m_household->workplace(), m_build, m_box, toCore(child));
    m_problem = filled ? QString() : m_household->sentenceFor(filled.error());
    if (filled)
        m_box = *filled;
    tell();
}

void BuildBoxViewModel::setPieces(int row, int pieces)
{
    if (!isRow(row))
        return;
    if (BoxPart *part = partFor(rowAt(row)))
        part->pieces = pieces;
    tell();
}

void BuildBoxViewModel::leaveOut(int row)
{
    if (!isRow(row))
        return;
    if (const BoxPart *part = partFor(rowAt(row))) {
        const ItemId out = part->item;
        std::erase_if(m_box.box.parts, [&](const BoxPart &one) { return one.item == out; });
    }
    tell();
}

void BuildBoxViewModel::putBack(int row)
{
    if (!isRow(row))
        return;
    const Row back = rowAt(row);
    std::erase_if(m_box.personal.departures,
                  [&](const workbench::Departure &one) { return one.item == back.item; });
    if (BoxPart *part = partFor(back))
        *part = {back.item, std::max(1, back.usual), {}};
    else
        m_box.box.parts.push_back({back.item, std::max(1, back.usual), {}});
    tell();
}

void BuildBoxViewModel::swap(int row)
{
    const auto *with = isRow(row) ? swapOf(rowAt(row)) : nullptr;
    if (with == nullptr || has(fromCore(with->id.value)))
        return;
    const Row old = rowAt(row);
    if (BoxPart *part = partFor(old))
        *part = {with->id, part->pieces, old.item};
    else
        m_box.box.parts.push_back({with->id, std::max(1, old.usual), old.item});
    tell();
}

void BuildBoxViewModel::putIn(const QString &itemId)
{
    const ItemId item{toCore(itemId)};
    if (item.empty() || has(itemId))
        return;
    const auto *kind = m_household->catalogue().item(item);
    m_box.box.parts.push_back({item, kind != nullptr ? std::max(1, kind->lidCount) : 1, {}});
    tell();
}

void BuildBoxViewModel::setReason(int row, const QString &reason)
{
    const auto why = workbench::whyNames.parse(toCore(reason));
    if (isRow(row) && why)
        reasonFor(rowAt(row).item).why = *why;
    tell();
}

void BuildBoxViewModel::setWords(int row, const QString &words)
{
    if (!isRow(row) || reasonOf(rowAt(row).item) == nullptr)
        return;
    reasonFor(rowAt(row).item).words = toCore(words);
    emit loaded();
}

/// A reason for what does not differ any more is none.
bool BuildBoxViewModel::keep(const QString &whose)
{
    workbench::KeptBox wanted = m_box;
    wanted.box.whose = toCore(whose);
    std::erase_if(wanted.personal.departures, [this](const workbench::Departure &departure) {
        const auto row = std::ranges::find(m_rows, departure.item, &Row::item);
        return row == m_rows.end() || !differs(*row);
    });
    m_problem =
        clinicAnswer(*m_household, usecase::keepBox(m_household->workplace(), m_build, wanted));
    emit loaded();
    return m_problem.isEmpty();
}

bool BuildBoxViewModel::drop()
{
    m_problem =
        clinicAnswer(*m_household, usecase::dropBox(m_household->workplace(), m_build, m_code));
    emit loaded();
    return m_problem.isEmpty();
}

} // namespace lidlark::mobile
