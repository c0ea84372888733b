#include "put_back_view_model.h"

#include "core/wording/count_words.h"
#include "core/wording/play_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

int wordOf(const box::Exceptions &exceptions)
{
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i) {
        if (exceptions.counts[i] > 0)
            return static_cast<int>(i);
    }
    return -1;
}

} // namespace

void PutBackViewModel::setPlayInHand(PlayInHand *playInHand)
{
    m_playInHand = playInHand;
    connect(playInHand, &PlayInHand::changed, this, &PutBackViewModel::load);
    load();
}

void PutBackViewModel::load()
{
    renewRows([this] { readRows(); });
    emit changed();
}

void PutBackViewModel::readRows()
{
    m_rows.clear();
    const auto &catalogue = m_playInHand->household()->catalogue();
    for (usecase::HomeCount &count : m_playInHand->homeCounts())
        m_rows.push_back({catalogue.item(count.item), std::move(count), false, {}});
    readCare();
    m_named = m_playInHand->exceptions();
}

QStringList PutBackViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_rows.size()));
    for (const Row &row : m_rows)
        keys.append(fromCore(row.count.item.value));
    return keys;
}

void PutBackViewModel::readCare()
{
    for (const usecase::BoxItem &item : m_playInHand->household()->boxItems()) {
        const auto row = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row &one) {
            return one.count.item == item.row.item;
        });
        if (row == m_rows.end())
            continue;
        row->mouthed = item.row.care.mouthed;
        const bool perishable = item.kind != nullptr && item.kind->life.openAirDays.has_value();
        if (perishable && item.freshness.inUse() != nullptr)
            row->openPiece = item.freshness.inUse()->id;
    }
}

int PutBackViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

const PutBackViewModel::Row *PutBackViewModel::rowAt(int row) const
{
    return row >= 0 && row < rowCount() ? &m_rows[static_cast<std::size_t>(row)] : nullptr;
}

box::Exceptions PutBackViewModel::named(const ItemId &item) const
{
    const auto found = m_named.find(item);
    return found == m_named.end() ? box::Exceptions{} : found->second;
}

QVariant PutBackViewModel::data(const QModelIndex &index, int role) const
{
    const Row *row = rowAt(index.row());
    if (row == nullptr)
        return {};
    const box::Exceptions gone = named(row->count.item);
    switch (role) {
    case ItemIdRole:
        return fromCore(row->count.item.value);
    case NameRole:
        return row->kind != nullptr ? capitalised(fromCore(row->kind->name))
                                    : fromCore(row->count.item.value);
    case DrawingRole:
        return fromCore(row->kind != nullptr ? row->kind->drawing : std::string());
    case ExpectedRole:
        return row->count.out;
    case DueRole:
        return row->count.due;
    case HomeRole:
        return row->count.home;
    case CountTextRole:
        return row->count.due > 0
                   ? tr("%1 of %2").arg(numerals(row->count.home), numerals(row->count.due))
                   : tr("none to come");
    case NoteRole:
        return translated(wording::wentOutWords(row->count.out, row->count.due));
    case WordRole:
        return wordOf(gone);
    case NamedRole:
        return gone.total();
    case CanStandOpenRole:
        return !row->openPiece.empty();
    case LeftOpenRole:
        return m_leftOpen.contains(row->count.item);
    case MouthedRole:
        return row->mouthed;
    default:
        return {};
    }
}

QHash<int, QByteArray> PutBackViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},
            {NameRole, "name"},
            {DrawingRole, "drawing"},
            {ExpectedRole, "expected"},
            {HomeRole, "home"},
            {CountTextRole, "countText"},
            {DueRole, "due"},
            {NoteRole, "note"},
            {WordRole, "word"},
            {NamedRole, "named"},
            {CanStandOpenRole, "canStandOpen"},
            {LeftOpenRole, "leftOpen"},
            {MouthedRole, "mouthed"}};
}

bool PutBackViewModel::allTapped() const
{
    return std::all_of(m_rows.begin(), m_rows.end(),
                       [](const Row &row) { return row.count.home >= row.count.due; });
}

QStringList PutBackViewModel::putBackLines() const
{
    QStringList lines;
    const catalogue::Activity *activity =
        m_playInHand != nullptr ? m_playInHand->activity() : nullptr;
    if (activity == nullptr)
        return lines;
    for (const std::string &line : activity->putBack)
        lines.append(fromCore(line));
    return lines;
}

QStringList PutBackViewModel::words() const
{
    QStringList texts;
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i)
        texts.append(translated(wording::exceptionWord(static_cast<box::ExceptionKind>(i))));
    return texts;
}

void PutBackViewModel::tap(int index)
{
    const Row *row = rowAt(index);
    if (row == nullptr)
        return;
    const int due = row->count.due;
    const int home = row->count.home >= due ? 0 : row->count.home + 1;
    if (m_playInHand->tapHome(row->count.item, home) && home > 0 && m_voice != nullptr)
        m_voice->say(translated(wording::homeAloud(home, due)));
}

bool PutBackViewModel::nameWord(int index, int word)
{
    const Row *row = rowAt(index);
    if (row == nullptr || word < 0 || word >= static_cast<int>(box::exceptionKindCount))
        return false;
    const box::Exceptions before = named(row->count.item);
    box::Exceptions said;
    if (wordOf(before) != word)
        said.set(static_cast<box::ExceptionKind>(word), std::max(1, before.total()));
    return m_playInHand->nameExceptions(row->count.item, said);
}

bool PutBackViewModel::nameCount(int index, int pieces)
{
    const Row *row = rowAt(index);
    if (row == nullptr || pieces < 0)
        return false;
    const int word = wordOf(named(row->count.item));
    box::Exceptions said;
    if (word >= 0)
        said.set(static_cast<box::ExceptionKind>(word), pieces);
    return m_playInHand->nameExceptions(row->count.item, said);
}

bool PutBackViewModel::canBeRescued(int index, int word) const
{
    const Row *row = rowAt(index);
    return row != nullptr && word == static_cast<int>(box::ExceptionKind::DriedOut) &&
           row->kind != nullptr && !row->kind->life.rescue.empty();
}

bool PutBackViewModel::noteLeftOpen(int index)
{
    const Row *row = rowAt(index);
    if (row == nullptr || row->openPiece.empty())
        return false;
    const ItemId item = row->count.item;
    const Outcome done = m_household->noteLeftOpen(item, row->openPiece);
    if (done)
        m_leftOpen.insert(item);
    return report(done);
}

bool PutBackViewModel::noteMouthed(int index)
{
    const Row *row = rowAt(index);
    return row != nullptr &&
           report(m_household->noteHygiene(row->count.item, box::HygieneMark::Mouthed));
}

bool PutBackViewModel::report(const Outcome &outcome)
{
    m_problem = outcome ? QString() : m_household->sentenceFor(outcome.error());
    if (outcome)
        m_household->announce();
    load();
    return outcome.ok();
}

bool PutBackViewModel::needsFloorCheck() const
{
    return m_household->floorSearch().isUrgent();
}

} // namespace lidlark::mobile
