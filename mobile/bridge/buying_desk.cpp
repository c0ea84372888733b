#include "mobile/bridge/buying_desk.h"

#include "core/store/box_repository.h"
#include "core/wording/build_words.h"
#include "core/wording/day_words.h"
#include "core/wording/money_words.h"
#include "core/wording/pack_words.h"
#include "core/workbench/box_departures.h"
#include "core/workbench/boxes_alike.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

BoughtNames boughtNames(Household &household)
{
    const auto kept = usecase::keptSupplies(household.workplace());
    return [&household, kept](const ItemId &item) {
        const bool handed = workbench::handOf(item) != workbench::Hand::Unsaid;
        const auto *kind = household.catalogue().item(workbench::kindOf(item));
        if (kind != nullptr && !handed)
            return kind->name;
        if (kept) {
            if (const auto supply = kept->find(item); supply != kept->end())
                return supply->second.supply.name;
        }
        return kind != nullptr ? kind->name : item.value;
    };
}

QString boughtName(const BoughtNames &names, const ItemId &item)
{
    return capitalised(fromCore(names(item)));
}

std::vector<ItemId> thingsForBoxes(Household &household)
{
    std::vector<ItemId> things;
    for (const catalogue::ItemKind &kind : household.catalogue().items()) {
        if (kind.source == catalogue::Source::Box)
            things.push_back(kind.id);
    }
    const auto kept = usecase::keptSupplies(household.workplace());
    if (!kept)
        return things;
    for (const auto &[item, supply] : *kept) {
        const auto *kind = household.catalogue().item(workbench::kindOf(item));
        if (kind == nullptr || kind->source == catalogue::Source::Home)
            things.push_back(item);
    }
    return things;
}

QString moneyWords(std::int64_t pence, const std::string &currency)
{
    return numerals(fromCore(wording::moneyText(pence, currency)));
}

QString dateOf(Day day)
{
    return translated(wording::dateWords(day));
}

QStringList differencesOf(const workbench::KeptBox &box, const workbench::Design &design,
                          const BoughtNames &names)
{
    QStringList words;
    for (const auto &difference : workbench::differencesFrom(design, box.box.parts))
        words.append(translated(wording::differenceSentence(
            difference, [&names](const ItemId &item) { return wording::Argument(names(item)); })));
    return words;
}

QStringList callOutsOf(const workbench::KeptBox &box, const workbench::Design *design,
                       const BoughtNames &names)
{
    QStringList words;
    const auto calls = workbench::callOutsOf(box, design);
    for (const wording::CalledLine &line : wording::callOutLines(calls, names))
        words.append(translated(line.words));
    return words;
}

QStringList childrenOn(Household &household)
{
    const auto boxes = store::BoxRepository(household.workplace().database).boxes();
    QStringList children;
    for (const store::BoxRow &box : boxes ? *boxes : std::vector<store::BoxRow>())
        children.append(fromCore(box.alias));
    return children;
}

workbench::Designs designsOn(Household &household)
{
    auto designs = usecase::keptDesigns(household.workplace());
    return designs ? *std::move(designs) : workbench::Designs();
}

QStringList moreBoxesWords(Household &household, const workbench::KeptBuild &build,
                           const std::vector<workbench::KeptBox> &boxes)
{
    const auto answer = usecase::moreBoxesIn(household.workplace(), build.id, boxes);
    if (!answer)
        return {household.sentenceFor(answer.error())};
    QStringList words;
    if (const auto *problems = std::get_if<workbench::BuildProblems>(&*answer)) {
        for (const workbench::BuildProblem &problem : *problems)
            words.append(translated(wording::buildProblemSentence(problem)));
        return words;
    }
    const auto &more = std::get<workbench::OneMoreBox>(*answer);
    const bool alike = workbench::boxesAlike(boxes).size() == 1;
    words.append(numerals(translated(
        wording::moreBoxesSentence(more, static_cast<int>(boxes.size()), alike, build.currency))));
    const BoughtNames names = boughtNames(household);
    for (const workbench::ChangedLine &line : more.changed)
        words.append(translated(wording::changedLineSentence(
            line, [&names](const ItemId &item) { return wording::Argument(names(item)); })));
    return words;
}

} // namespace lidlark::mobile
