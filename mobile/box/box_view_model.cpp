#include "box_view_model.h"

#include "item_words.h"
#include "well_order.h"

#include "core/wording/caseload_words.h"
#include "core/wording/day_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

void BoxViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &BoxViewModel::load);
    load();
}

void BoxViewModel::setSitting(Sitting *sitting)
{
    m_sitting = sitting;
    connect(sitting, &Sitting::changed, this, &BoxViewModel::loaded);
    emit loaded();
}

void BoxViewModel::load()
{
    beginResetModel();
    auto family = m_household->family();
    m_problem = family ? QString() : m_household->sentenceFor(family.error());
    m_family.reset();
    if (family)
        m_family = *std::move(family);
    m_items = m_household->boxItems();
    sortByWell(m_items);
    m_floorNote = !m_household->floorSearch().missing.empty();
    m_countDue = m_household->countIsDue();
    readTakeOuts();
    readNewList();
    endResetModel();
    emit loaded();
}

void BoxViewModel::readTakeOuts()
{
    m_mustLeave = false;
    m_outTags.clear();
    for (const usecase::TakeOut &takeOut : m_household->takeOuts()) {
        m_mustLeave = m_mustLeave || !takeOut.isDone();
        for (const usecase::TakeOutThing &thing : takeOut.things) {
            m_outTags[thing.item] = thing.out ? tr("taken out") : tr("take out");
            if (thing.asked)
                m_outTags[*thing.swap] = tr("asked for");
        }
    }
}

/// What is removed and out is no part of the box any more.
void BoxViewModel::readNewList()
{
    m_list = newList(*m_household);
    m_lidIsOld = lidIsOutOfDate(*m_household, m_list);
    m_mustLeave = m_mustLeave || listRemovesMore(m_list);
    if (!m_list)
        return;
    for (const usecase::RemovedThing &thing : m_list->takeOut) {
        m_outTags[thing.item] = tr("take out");
        if (thing.out && thing.pieces == 0)
            std::erase_if(m_items,
                          [&thing](const auto &item) { return item.row.item == thing.item; });
    }
}

int BoxViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_items.size());
}

QString BoxViewModel::tagOf(const usecase::BoxItem &item) const
{
    const auto out = m_outTags.find(item.row.item);
    const bool removed = m_family && usecase::isToTakeOut(*m_family, item.row.item);
    const bool outSaysMore =
        removed || item.kind == nullptr || item.row.expected > 0 || item.row.high == 0;
    return out != m_outTags.end() && outSaysMore ? out->second : wellTag(item);
}

QVariant BoxViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const usecase::BoxItem &item = m_items[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemIdRole:
        return fromCore(item.row.item.value);
    case NameRole:
        return itemNameInside(item);
    case DrawingRole:
        return itemDrawing(item);
    case CountTextRole:
        return countText(item);
    case TagRole:
        return tagOf(item);
    case NoneRole:
        return item.row.high == 0;
    default:
        return {};
    }
}

QHash<int, QByteArray> BoxViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},       {NameRole, "name"}, {DrawingRole, "drawing"},
            {CountTextRole, "countText"}, {TagRole, "tag"},   {NoneRole, "none"}};
}

QString BoxViewModel::placeWords() const
{
    if (!m_family || !m_family->place)
        return tr("Nobody has said where it is");
    const box::Place &place = *m_family->place;
    const QString said = saidWords(place);
    return place.orElse ? tr("%1. Or: %2").arg(said, saidWords(*place.orElse)) : said;
}

QString BoxViewModel::saidWords(const box::PlaceSaid &said) const
{
    const auto day = wording::dayWords(said.when.day, m_household->today().day);
    return tr("%1, says %2, %3")
        .arg(isolated(capitalised(fromCore(said.words))), isolated(fromCore(said.author)),
             translated(day));
}

QString BoxViewModel::revisionWords() const
{
    return m_family && m_family->revision
               ? tr("Lid list R%1").arg(m_family->revision->revision.number)
               : QString();
}

QString BoxViewModel::lidWords() const
{
    return m_lidIsOld ? translated(wording::lidOutOfDate(m_list->number, m_list->sent)) : QString();
}

QString BoxViewModel::whyWords() const
{
    QStringList lines;
    if (m_lidIsOld) {
        for (const std::string &why : m_list->why)
            lines.append(translated(wording::whyChanged(m_list->by, why)));
    }
    return lines.join(u'\n');
}

QString BoxViewModel::onTheWay() const
{
    return m_list && !m_list->onTheWay.empty()
               ? translated(wording::onTheWay(toCore(itemNames(*m_household, m_list->onTheWay))))
               : QString();
}

bool BoxViewModel::here() const
{
    if (m_sitting != nullptr && m_sitting->boxNotHere())
        return false;
    return !m_family || !m_family->place || m_family->place->mayBeAt(m_family->home.value);
}

QString BoxViewModel::requestWords() const
{
    const auto asked = std::count_if(m_items.begin(), m_items.end(), [](const auto &item) {
        return item.request && item.request->isOpen();
    });
    const auto low = std::count_if(m_items.begin(), m_items.end(), [](const auto &item) {
        return isLow(item) && !(item.request && item.request->isOpen());
    });
    QStringList parts;
    if (asked > 0)
        parts.append(numerals(tr("%n asked for.", nullptr, static_cast<int>(asked))));
    if (low > 0)
        parts.append(numerals(tr("%n running low.", nullptr, static_cast<int>(low))));
    return parts.isEmpty() ? tr("Nothing asked for, nothing low.") : parts.join(u' ');
}

void BoxViewModel::sayHere()
{
    if (!m_family)
        return;
    const QString home = m_household->homeName();
    const QString words = home.isEmpty() ? tr("at home") : tr("at %1").arg(home);
    const Outcome done = m_household->sayPlace(m_family->home.value, toCore(words));
    if (done)
        m_sitting->setBoxNotHere(false);
    m_household->announce();
    if (!done) {
        m_problem = m_household->sentenceFor(done.error());
        emit loaded();
    }
}

void BoxViewModel::sayLidIsNew()
{
    if (!m_list)
        return;
    const Outcome kept = mobile::sayLidIsNew(*m_household, *m_list);
    if (kept)
        load();
    else {
        m_problem = m_household->sentenceFor(kept.error());
        emit loaded();
    }
}

void BoxViewModel::sayNotHere()
{
    m_sitting->setBoxNotHere(true);
}

QString BoxViewModel::names() const
{
    QStringList names;
    names.reserve(rowCount());
    for (int row = 0; row < rowCount(); ++row)
        names.append(data(index(row), NameRole).toString());
    return names.join(u' ');
}

} // namespace lidlark::mobile
