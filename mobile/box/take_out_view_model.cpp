#include "take_out_view_model.h"

#include "core/catalogue/care_about.h"
#include "core/wording/caseload_words.h"
#include "core/wording/day_words.h"
#include "core/wording/take_out_words.h"
#include "mobile/bridge/guarding_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

void TakeOutViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &TakeOutViewModel::load);
    load();
}

void TakeOutViewModel::load()
{
    renewRows([this] { readRows(); });
    emit loaded();
}

void TakeOutViewModel::readRows()
{
    m_takeOuts = m_household->takeOuts();
    m_list = newList(*m_household);
    m_rows.clear();
    for (const usecase::TakeOut &takeOut : m_takeOuts) {
        for (const usecase::TakeOutThing &thing : takeOut.things)
            m_rows.push_back(rowFor(thing));
    }
    addRemoved();
    for (const usecase::TakeOut &takeOut : m_takeOuts) {
        for (const ItemId &item : takeOut.stays)
            m_rows.push_back(rowForStaying(item, takeOut.note.what));
    }
}

/// What must be avoided as well stands above already.
void TakeOutViewModel::addRemoved()
{
    if (!m_list)
        return;
    const std::size_t avoided = m_rows.size();
    for (const usecase::RemovedThing &thing : m_list->takeOut) {
        const auto known =
            std::find_if(m_rows.begin(), m_rows.begin() + static_cast<std::ptrdiff_t>(avoided),
                         [&thing](const Row &row) { return row.item == thing.item; });
        if (known == m_rows.begin() + static_cast<std::ptrdiff_t>(avoided))
            m_rows.push_back(rowFor(thing));
    }
}

QStringList TakeOutViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_rows.size()));
    for (const Row &row : m_rows)
        keys.append(fromCore(row.item.value));
    return keys;
}

QString TakeOutViewModel::outWords(const std::string &by, const DayPart &when) const
{
    return tr("Taken out, says %1, %2.")
        .arg(isolated(fromCore(by)),
             translated(wording::dayWords(when.day, m_household->today().day)));
}

TakeOutViewModel::Row TakeOutViewModel::rowFor(const usecase::RemovedThing &thing) const
{
    const QString note = thing.out ? outWords(thing.outBy, thing.outWhen)
                                   : translated(wording::stillInBox(thing.pieces));
    return {thing.item, note, tr("No longer on the lid list"), false, thing.out};
}

TakeOutViewModel::Row TakeOutViewModel::rowFor(const usecase::TakeOutThing &thing) const
{
    QStringList parts;
    if (thing.out)
        parts.append(outWords(thing.outBy, thing.outWhen));
    else
        parts.append(translated(wording::stillInBox(thing.pieces)));
    const catalogue::ItemKind *swap =
        thing.swap ? m_household->catalogue().item(*thing.swap) : nullptr;
    if (swap != nullptr)
        parts.append(translated(wording::standsIn(swap->name, thing.asked)));
    return {thing.item, parts.join(u' '), {}, false, thing.out};
}

/// What the item's own file says about it: nobody here vouches for more.
TakeOutViewModel::Row TakeOutViewModel::rowForStaying(const ItemId &item, child::Avoided what) const
{
    const catalogue::ItemKind *kind = m_household->catalogue().item(item);
    if (kind == nullptr)
        return {item, {}, tr("These stay"), true, false};
    const auto line = catalogue::careAbout(*kind, child::avoidedNames.of(what));
    const QString note =
        line ? guardingLines(*kind, &catalogue::ItemKind::care).at(static_cast<qsizetype>(*line))
             : QString();
    return {item, note, tr("These stay"), true, false};
}

int TakeOutViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant TakeOutViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    const Row &row = m_rows[at];
    const catalogue::ItemKind *kind = m_household->catalogue().item(row.item);
    switch (role) {
    case ItemIdRole:
        return fromCore(row.item.value);
    case HeadingRole:
        return at == 0 || m_rows[at - 1].heading != row.heading ? row.heading : QString();
    case NameRole:
        return kind != nullptr ? capitalised(fromCore(kind->name)) : fromCore(row.item.value);
    case DrawingRole:
        return fromCore(kind != nullptr ? kind->drawing : std::string());
    case NoteRole:
        return row.note;
    case StaysRole:
        return row.stays;
    case OutRole:
        return row.out;
    default:
        return {};
    }
}

QHash<int, QByteArray> TakeOutViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},   {HeadingRole, "heading"}, {NameRole, "name"},
            {DrawingRole, "drawing"}, {NoteRole, "note"},       {StaysRole, "stays"},
            {OutRole, "out"}};
}

QString TakeOutViewModel::lead() const
{
    std::vector<wording::Sentence> sentences;
    sentences.reserve(m_takeOuts.size());
    for (const usecase::TakeOut &takeOut : m_takeOuts)
        sentences.push_back(wording::freeHome(takeOut.note.what));
    if (m_list && sentences.empty())
        sentences.push_back(wording::newListSent(m_list->number));
    return safetyText(sentences);
}

QString TakeOutViewModel::text() const
{
    if (m_takeOuts.empty())
        return m_list ? safetyText(wording::takeOutOfBox()) : QString();
    // Wheat comes last and asks for more: hands and table.
    return safetyText(
        {wording::takeThemOut(m_takeOuts.back().note.what), wording::emergencyLine()});
}

QStringList TakeOutViewModel::said() const
{
    QStringList lines;
    for (const usecase::TakeOut &takeOut : m_takeOuts) {
        const usecase::SafetyNote &note = takeOut.note;
        const wording::Sentence day = wording::dayWords(note.when.day, m_household->today().day);
        lines.append(translated(wording::saidBy(note.author, note.person, day, note.minuteOfDay)));
    }
    if (m_list) {
        lines.append(translated(wording::revisionSent(m_list->number, m_list->sent)));
        for (const std::string &why : m_list->why)
            lines.append(translated(wording::whyChanged(m_list->by, why)));
    }
    return lines;
}

QStringList TakeOutViewModel::atHome() const
{
    QStringList lines;
    for (const usecase::TakeOut &takeOut : m_takeOuts)
        lines.append(safetyText(wording::lookAtHome(takeOut.note.what)));
    return lines;
}

bool TakeOutViewModel::allOut() const
{
    return !listRemovesMore(m_list) &&
           std::all_of(m_takeOuts.begin(), m_takeOuts.end(),
                       [](const usecase::TakeOut &takeOut) { return takeOut.isDone(); });
}

void TakeOutViewModel::confirm(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    const Row confirmed = m_rows[static_cast<std::size_t>(row)];
    if (confirmed.out || confirmed.stays)
        return;
    const Outcome done = m_household->confirmTakenOut(confirmed.item);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_household->announce();
    else
        emit loaded();
}

} // namespace lidlark::mobile
