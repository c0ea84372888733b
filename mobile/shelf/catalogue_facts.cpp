#include "catalogue_facts.h"

#include <QCoreApplication>

#include "core/wording/keeping_words.h"
#include "core/wording/measure_words.h"
#include "core/wording/tag_words.h"
#include "mobile/bridge/guarding_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"

namespace lidlark::mobile {

namespace {

struct CatalogueFacts {
    Q_DECLARE_TR_FUNCTIONS(CatalogueFacts)
};

constexpr auto newLine = u'\n';

QString linesOf(const std::vector<wording::Sentence> &sentences)
{
    QStringList lines;
    for (const wording::Sentence &sentence : sentences)
        lines.append(numerals(translated(sentence)));
    return lines.join(newLine);
}

QString fromMeasures(const catalogue::ItemKind &kind)
{
    const auto words = wording::measuredWords(kind.measures);
    if (!words.empty())
        return safetyText(words);
    return kind.measures.whole ? CatalogueFacts::tr("Nothing small and no long cord.")
                               : CatalogueFacts::tr("Nothing: it has no size to go by.");
}

QString cautionsOf(const catalogue::ItemKind &kind)
{
    std::vector<wording::Sentence> cautions;
    for (const catalogue::Tag tag : kind.tags.list())
        cautions.push_back({wording::tagCaution(tag), {}});
    return safetyText(cautions);
}

QString allergensOf(const catalogue::ItemKind &kind)
{
    QStringList names;
    for (const std::string &allergen : kind.allergens)
        names.append(translated(wording::allergenWord(allergen)));
    return names.isEmpty() ? CatalogueFacts::tr("None known")
                           : capitalised(names.join(QStringLiteral(", ")));
}

QString swapOf(const catalogue::Catalogue &catalogue, const catalogue::ItemKind &kind)
{
    const catalogue::ItemKind *with = kind.swap ? catalogue.item(kind.swap->with) : nullptr;
    if (with == nullptr)
        return {};
    const QString name = capitalised(fromCore(with->name));
    return kind.swap->note.empty()
               ? name
               : CatalogueFacts::tr("%1. %2").arg(name, fromCore(kind.swap->note));
}

QString washingOf(const catalogue::ItemKind &kind)
{
    const QString washing = safetyText(wording::washingWords(kind.cleanable));
    return kind.singleChild
               ? washing + newLine + CatalogueFacts::tr("Never issued again to another child.")
               : washing;
}

QString keepingOf(const catalogue::ItemKind &kind)
{
    const QString keeping = linesOf(wording::keepingWords(kind.life));
    const QString look = lookWordsOf(kind);
    return look.isEmpty() ? keeping : keeping + newLine + look;
}

} // namespace

std::vector<CatalogueFact> catalogueFacts(const catalogue::Catalogue &catalogue,
                                          const catalogue::ItemKind &kind)
{
    std::vector<CatalogueFact> facts{
        {CatalogueFacts::tr("Measures"), linesOf(wording::measureWords(kind.measures))},
        {CatalogueFacts::tr("What follows from them"), fromMeasures(kind)},
        {CatalogueFacts::tr("Cautions"), cautionsOf(kind)},
        {CatalogueFacts::tr("Allergens"), allergensOf(kind)},
        {CatalogueFacts::tr("In its place"), swapOf(catalogue, kind)},
        {CatalogueFacts::tr("In a standard box"),
         kind.lidCount > 0 ? numerals(kind.lidCount) : QString()},
        {CatalogueFacts::tr("How long it keeps"), keepingOf(kind)},
        {CatalogueFacts::tr("Washing"), washingOf(kind)},
        {CatalogueFacts::tr("Care"),
         guardingLines(kind, &catalogue::ItemKind::care).join(newLine)}};
    std::erase_if(facts, [](const CatalogueFact &fact) { return fact.words.isEmpty(); });
    return facts;
}

QString cautionsInShort(const catalogue::ItemKind &kind)
{
    QStringList names;
    for (const catalogue::Tag tag : kind.tags.list()) {
        const QString name = translated({wording::tagShort(tag), {}});
        names.append(names.isEmpty() ? name : uncapitalised(name));
    }
    return names.join(QStringLiteral(", "));
}

} // namespace lidlark::mobile
