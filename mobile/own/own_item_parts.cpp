#include "own_item_view_model.h"

#include "core/catalogue/allergen.h"
#include "core/wording/keeping_words.h"
#include "core/wording/own_item_words.h"
#include "core/wording/tag_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

/// In the order of their chips: those with a tag of their own first.
std::vector<std::string> allergenNames()
{
    std::vector<std::string> names{"latex", "wheat", "milk"};
    names.insert(names.end(), catalogue::plainAllergens.begin(), catalogue::plainAllergens.end());
    return names;
}

/// What an allergen brings is asked for there alone.
std::vector<catalogue::Tag> tagsToAdd()
{
    std::vector<catalogue::Tag> tags;
    for (std::size_t i = 0; i < catalogue::tagCount; ++i) {
        const auto tag = static_cast<catalogue::Tag>(i);
        if (tag != catalogue::Tag::Latex && tag != catalogue::Tag::Wheat)
            tags.push_back(tag);
    }
    return tags;
}

bool hasAllergen(const catalogue::ItemKind &kind, const std::string &allergen)
{
    return std::ranges::find(kind.allergens, allergen) != kind.allergens.end();
}

/// Each by itself is so or not. @param fixed what is so of ours stays so.
void askFlags(OwnChoice &choice, const QStringList &names, const std::vector<bool *> &flags,
              const std::vector<bool> &fixed)
{
    choice.ask(
        names, [flags](int index) { return *flags[static_cast<std::size_t>(index)]; },
        [flags, fixed](int index) {
            const auto at = static_cast<std::size_t>(index);
            *flags[at] = !*flags[at] || fixed[at];
        });
}

} // namespace

catalogue::TagSet OwnItemViewModel::givenTags() const
{
    catalogue::TagSet tags = catalogue::hazardsOf(kind().measures).tags;
    if (hasAllergen(kind(), "latex"))
        tags.add(catalogue::Tag::Latex);
    if (hasAllergen(kind(), "wheat"))
        tags.add(catalogue::Tag::Wheat);
    return m_ours != nullptr ? tags | m_ours->tags : tags;
}

void OwnItemViewModel::askMeasures()
{
    m_rolls.ask({tr("Neither"), tr("As a ball"), tr("As a marble")}, isOne(kind().measures.rollsAs),
                takeOne(kind().measures.rollsAs));
    askFlags(m_hollowIs, {tr("Stiff: it keeps its shape in a hand")}, {&m_stiff}, {false});
    askFlags(m_filmHas, {tr("A string pulls it shut")}, {&m_drawstring}, {false});
}

void OwnItemViewModel::askMaterials()
{
    const std::vector<std::string> allergens = allergenNames();
    QStringList words;
    for (const std::string &allergen : allergens)
        words.append(capitalised(translated(wording::allergenWord(allergen))));
    const auto named = [allergens](int index) {
        return allergens[static_cast<std::size_t>(index)];
    };
    m_allergens.ask(
        words, [this, named](int index) { return hasAllergen(kind(), named(index)); },
        [this, named](int index) {
            const bool fixed = m_ours != nullptr && hasAllergen(*m_ours, named(index));
            if (!fixed && std::erase(kind().allergens, named(index)) == 0)
                kind().allergens.push_back(named(index));
        });

    QStringList banned{tr("None of these")};
    for (std::size_t i = 0; i < catalogue::bannedNames.names.size(); ++i)
        banned.append(translated({wording::bannedWord(static_cast<catalogue::Banned>(i)), {}}));
    m_holds.ask(
        banned,
        [this](int index) {
            const catalogue::Holds &holds = m_draft.holds;
            return holds &&
                   (index == 0
                        ? holds->empty()
                        : std::ranges::find(*holds, static_cast<catalogue::Banned>(index - 1)) !=
                              holds->end());
        },
        [this](int index) {
            if (!m_draft.holds || index == 0)
                m_draft.holds.emplace();
            const auto thing = static_cast<catalogue::Banned>(index - 1);
            if (index > 0 && std::erase(*m_draft.holds, thing) == 0)
                m_draft.holds->push_back(thing);
        });

    askFlags(m_traits, {tr("Cut, torn or pinched into pieces"), tr("Sharp, pointed or in a mouth")},
             {&kind().divides, &kind().seatedOnly},
             {m_ours != nullptr && m_ours->divides, m_ours != nullptr && m_ours->seatedOnly});

    const std::vector<catalogue::Tag> tags = tagsToAdd();
    QStringList tagWords;
    for (const catalogue::Tag tag : tags)
        tagWords.append(translated({wording::tagShort(tag), {}}));
    m_cautions.ask(
        tagWords,
        [this, tags](int index) { return kind().tags.has(tags[static_cast<std::size_t>(index)]); },
        [this, tags](int index) {
            const catalogue::Tag tag = tags[static_cast<std::size_t>(index)];
            if (givenTags().has(tag))
                return; // what is reckoned from sizes nobody takes off
            if (m_added.has(tag))
                m_added.remove(tag);
            else
                m_added.add(tag);
        });
}

void OwnItemViewModel::askKeeping()
{
    enum { CanBeWashed, CannotBeWashed, OneChild };
    m_washing.ask(
        {tr("Can be washed"), tr("Cannot be washed"), tr("Stays with one child")},
        [this](int index) {
            return index == OneChild ? kind().singleChild
                                     : kind().cleanable == (index == CanBeWashed);
        },
        [this](int index) {
            if (index == OneChild)
                kind().singleChild = !kind().singleChild || (m_ours && m_ours->singleChild);
            else
                kind().cleanable = index == CanBeWashed && (!m_ours || m_ours->cleanable);
        });
    askFlags(m_looking, {tr("Looked at before every use"), tr("Used once only")},
             {&kind().life.checkEachUse, &kind().life.singleUse},
             {m_ours != nullptr && m_ours->life.checkEachUse,
              m_ours != nullptr && m_ours->life.singleUse});
    m_place.ask({tr("In the box"), tr("Lent by the home")}, isOne(kind().source),
                takeOne(kind().source));
    m_comesBack.ask({tr("Comes back"), tr("Comes back, and is counted"), tr("Comes back smaller"),
                     tr("Used up in play")},
                    isOne(kind().comesBack), takeOne(kind().comesBack));
}

QStringList OwnItemViewModel::pictures(const QString &words) const
{
    constexpr int mostPictures = 12; // as many as somebody looks through
    QStringList ids;
    if (m_household == nullptr)
        return ids;
    for (const catalogue::ItemKind &item : m_household->catalogue().items()) {
        const bool ours = !catalogue::isOwnId(item.id.value);
        if (ours && ids.size() < mostPictures &&
            fromCore(item.name).contains(words.trimmed(), Qt::CaseInsensitive))
            ids.append(fromCore(item.id.value));
    }
    return ids;
}

QString OwnItemViewModel::nameOf(const QString &itemId) const
{
    const catalogue::ItemKind *item =
        m_household != nullptr ? m_household->catalogue().item({toCore(itemId)}) : nullptr;
    return item != nullptr ? capitalised(fromCore(item->name)) : itemId;
}

QString OwnItemViewModel::drawingOf(const QString &itemId) const
{
    const catalogue::ItemKind *item =
        m_household != nullptr ? m_household->catalogue().item({toCore(itemId)}) : nullptr;
    return item != nullptr ? fromCore(item->drawing) : QStringLiteral("item-box");
}

/// The words for who cannot see it are those of the picture, whatever it stands for.
void OwnItemViewModel::draw(const QString &itemId)
{
    const catalogue::ItemKind *item =
        m_household != nullptr ? builtInItem(*m_household, itemId) : nullptr;
    kind().drawing = item != nullptr ? item->drawing : "item-box";
    kind().alt = item != nullptr ? item->alt : "A box.";
    touch();
}

} // namespace lidlark::mobile
