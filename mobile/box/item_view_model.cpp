#include "item_view_model.h"

#include "item_words.h"

#include "core/wording/freshness_words.h"
#include "core/wording/play_words.h"
#include "core/wording/tag_words.h"
#include "mobile/bridge/guarding_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

QStringList safetyLines(const std::vector<wording::Sentence> &sentences)
{
    QStringList lines;
    for (const wording::Sentence &sentence : sentences)
        lines.append(safetyText(sentence));
    return lines;
}

QStringList linesOf(const std::vector<std::string> &texts)
{
    QStringList lines;
    for (const std::string &text : texts)
        lines.append(fromCore(text));
    return lines;
}

} // namespace

void ItemViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &ItemViewModel::load);
    load();
}

QString ItemViewModel::itemId() const
{
    return fromCore(m_id.value);
}

void ItemViewModel::setItemId(const QString &itemId)
{
    m_id = {toCore(itemId)};
    load();
}

void ItemViewModel::load()
{
    if (m_household == nullptr || m_id.empty())
        return;
    m_item = m_household->boxItem(m_id);
    emit loaded();
}

QString ItemViewModel::name() const
{
    return m_item ? itemName(*m_item) : QString();
}

QString ItemViewModel::drawing() const
{
    return m_item ? itemDrawing(*m_item) : QString();
}

QString ItemViewModel::countWords() const
{
    if (!m_item)
        return {};
    return m_item->row.high == 0 ? tr("None in the box")
                                 : tr("%1 in the box").arg(countText(*m_item));
}

QString ItemViewModel::standWords() const
{
    if (!m_item)
        return {};
    QStringList sentences{tr("%1 on the lid list.").arg(numerals(m_item->row.expected))};
    if (m_item->row.out > 0)
        sentences.append(outText(m_item->row.out));
    if (m_item->row.pleaseCount)
        sentences.append(tr("The numbers do not fit. A count will tell."));
    return sentences.join(u' ');
}

QStringList ItemViewModel::care() const
{
    return kind() != nullptr ? linesOf(kind()->care) : QStringList();
}

QStringList ItemViewModel::exceptionWords()
{
    QStringList words;
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i)
        words.append(translated(wording::exceptionWord(static_cast<box::ExceptionKind>(i))));
    return words;
}

QString ItemViewModel::mouthedWords() const
{
    return mouthed() ? safetyText(wording::mouthedWords(m_item->row.care, m_household->today()))
                     : QString();
}

QStringList ItemViewModel::afterMouth() const
{
    return safetyLines(wording::afterMouthWords(cleanable()));
}

QString ItemViewModel::look() const
{
    return kind() != nullptr ? lookWordsOf(*kind()) : QString();
}

QString ItemViewModel::lookedWords() const
{
    return m_item ? safetyText(wording::lookWords(m_item->freshness, m_household->today().day))
                  : QString();
}

QStringList ItemViewModel::rescue() const
{
    return kind() != nullptr ? linesOf(kind()->life.rescue) : QStringList();
}

QString ItemViewModel::petNotice() const
{
    if (kind() == nullptr || !kind()->tags.has(catalogue::Tag::Pet))
        return {};
    return safetyText({wording::tagCaution(catalogue::Tag::Pet), {}});
}

bool ItemViewModel::noteGone(int word, int pieces, int daysAgo)
{
    if (word < 0 || word >= static_cast<int>(box::exceptionKindCount) || daysAgo < 0)
        return false;
    return report(m_household->noteGone(m_id, static_cast<box::ExceptionKind>(word), pieces,
                                        m_household->today().day - daysAgo));
}

bool ItemViewModel::noteBackAgain(int pieces)
{
    return report(m_household->noteBackAgain(m_id, pieces));
}

bool ItemViewModel::noteGood()
{
    return report(m_household->noteChecked(m_id));
}

bool ItemViewModel::noteHygiene(const QString &name)
{
    const auto mark = box::hygieneMarkNames.parse(toCore(name));
    return mark && report(m_household->noteHygiene(m_id, *mark));
}

bool ItemViewModel::throwAway()
{
    return report(m_household->throwAway(m_id));
}

bool ItemViewModel::needsFloorCheck() const
{
    return m_household->floorSearch().isUrgent();
}

bool ItemViewModel::report(const Outcome &outcome)
{
    m_problem = outcome ? QString() : m_household->sentenceFor(outcome.error());
    if (outcome)
        m_household->announce();
    else
        emit loaded();
    return outcome.ok();
}

} // namespace lidlark::mobile
