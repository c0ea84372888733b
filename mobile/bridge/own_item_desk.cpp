#include "mobile/bridge/own_item_desk.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

using usecase::OwnFindings;
using workbench::OwnSort;

catalogue::SourceFile itemFile(const std::string &id, const std::string &text)
{
    return {"items/" + id + ".yaml", text};
}

/// What is typed until it is kept: the file as far as it goes, and what is in no file yet.
std::string heldFileKey(const std::string &id)
{
    return "own.thing.file." + id;
}

std::string heldTypedKey(const std::string &id)
{
    return "own.thing.typed." + id;
}

/// Empty: nothing was held.
Result<std::string> heldUnder(Household &household, const std::string &key)
{
    const auto held = store::DeviceRepository(household.workplace().database).localState(key);
    if (!held)
        return held.error();
    return held->value_or(std::string());
}

Outcome hold(Household &household, const std::string &key, const std::string &text)
{
    return store::DeviceRepository(household.workplace().database).setLocalState(key, text);
}

/// Nobody has said yet what it holds, and an own thing that is bought lies in boxes.
OwnItemDraft blankItem()
{
    OwnItemDraft draft;
    draft.kind.comesBack = catalogue::ComesBack::Counted;
    draft.kind.cleanable = true;
    draft.kind.drawing = "item-box";
    draft.kind.alt = "A box.";
    draft.kind.use = catalogue::UsePrior{1, 60};
    return draft;
}

OwnItemDraft measuringOtherwise(const catalogue::ItemKind &ours)
{
    OwnItemDraft draft;
    draft.kind = ours;
    draft.kind.version = 1; // the box's phones count it on from ours
    draft.holds = std::vector<catalogue::Banned>();
    return draft;
}

} // namespace

const catalogue::ItemKind *builtInItem(Household &household, const QString &id)
{
    return household.catalogueIn({}).item({toCore(id)});
}

Result<std::vector<OwnOnDesk>> ownItems(Household &household)
{
    const auto kept = usecase::ownKept(household.workplace());
    if (!kept)
        return kept.error();
    std::vector<OwnOnDesk> desk;
    for (const workbench::OwnKept &one : *kept) {
        if (one.sort != OwnSort::Item)
            continue;
        const QString id = fromCore(one.id);
        const auto draft = ownItemWriting(household, id);
        if (!draft)
            return draft.error();
        const catalogue::ItemKind *ours = household.catalogue().item({one.id});
        const bool isOurs = !catalogue::isOwnId(one.id) && ours != nullptr;
        OwnOnDesk row{id,
                      fromCore(isOurs ? ours->name : draft->kind.name),
                      fromCore(draft->kind.drawing),
                      isItemSignedOff(household, id),
                      {},
                      false};
        if (const Outcome added = addBoxes(household, one, row); !added)
            return added.error();
        desk.push_back(std::move(row));
    }
    return desk;
}

QString newOwnItem(Household &household)
{
    return fromCore(usecase::freshOwnId(household.workplace().entropy));
}

Result<OwnItemDraft> ownItemWriting(Household &household, const QString &id)
{
    const std::string name = toCore(id);
    const auto held = heldUnder(household, heldFileKey(name));
    const auto typed = heldUnder(household, heldTypedKey(name));
    const auto kept = usecase::ownKept(household.workplace(), OwnSort::Item, name);
    if (!held || !typed || !kept)
        return !held ? held.error() : !typed ? typed.error() : kept.error();
    const std::string text = !held->empty() ? *held : *kept ? (*kept)->text : std::string();
    const catalogue::ItemKind *ours = builtInItem(household, id);
    OwnItemDraft draft = ours != nullptr ? measuringOtherwise(*ours) : blankItem();
    if (!text.empty()) {
        draft.kind = catalogue::itemDraft(itemFile(name, text));
        draft.holds = catalogue::holdsIn(itemFile(name, text));
    }
    draft.kind.id = {name};
    draft.typed = fromCore(*typed);
    return draft;
}

bool isItemSignedOff(Household &household, const QString &id)
{
    const auto held = heldUnder(household, heldFileKey(toCore(id)));
    const auto typed = heldUnder(household, heldTypedKey(toCore(id)));
    const auto kept = usecase::ownKept(household.workplace(), OwnSort::Item, toCore(id));
    const bool nothingTyped = held && typed && held->empty() && typed->empty();
    return nothingTyped && kept && *kept && (*kept)->signedOff;
}

/// The first word of it puts it on the desk, so that it is found again.
Outcome holdItem(Household &household, const OwnItemDraft &draft)
{
    const std::string &id = draft.kind.id.value;
    const std::string text = yamlOf(draft.kind, draft.holds);
    const auto kept = usecase::ownKept(household.workplace(), OwnSort::Item, id);
    if (!kept)
        return kept.error();
    if (!*kept) {
        if (Outcome said = usecase::keepOwnItem(household.workplace(), id, text); !said)
            return said;
    }
    if (Outcome held = hold(household, heldTypedKey(id), toCore(draft.typed)); !held)
        return held;
    return hold(household, heldFileKey(id), text);
}

Outcome keepItem(Household &household, const QString &id)
{
    const std::string name = toCore(id);
    const auto held = heldUnder(household, heldFileKey(name));
    if (!held || held->empty())
        return held ? Outcome(Done{}) : held.error();
    const auto kept = usecase::ownKept(household.workplace(), OwnSort::Item, name);
    if (!kept)
        return kept.error();
    if (!*kept || (*kept)->text != *held) {
        if (Outcome said = usecase::keepOwnItem(household.workplace(), name, *held); !said)
            return said;
    }
    return hold(household, heldFileKey(name), {});
}

Outcome throwAwayItem(Household &household, const QString &id)
{
    const std::string name = toCore(id);
    const auto kept = usecase::ownKept(household.workplace(), OwnSort::Item, name);
    if (!kept)
        return kept.error();
    if (*kept) {
        if (Outcome done = usecase::throwAwayOwn(household.workplace(), OwnSort::Item, name); !done)
            return done;
    }
    if (Outcome gone = hold(household, heldTypedKey(name), {}); !gone)
        return gone;
    return hold(household, heldFileKey(name), {});
}

Result<OwnFindings> findingsOfItem(Household &household, const OwnItemDraft &draft)
{
    return usecase::findingsIn(household.workplace(), household.catalogueIn({}), OwnSort::Item,
                               draft.kind.id.value, yamlOf(draft.kind, draft.holds));
}

Result<OwnFindings> signOffItem(Household &household, const QString &id)
{
    if (const Outcome kept = keepItem(household, id); !kept)
        return kept.error();
    auto findings =
        usecase::publishOwnItem(household.workplace(), household.catalogueIn({}), toCore(id));
    if (findings && findings->clean())
        household.announce(); // the catalogue has it from now on
    return findings;
}

Result<std::vector<usecase::OwnReach>> reachOfItem(Household &household, const OwnItemDraft &draft)
{
    return usecase::reachOfOwn(household.workplace(), household.catalogueIn({}),
                               draft.kind.id.value, yamlOf(draft.kind, draft.holds));
}

Outcome sendItem(Household &household, const QString &child, const QString &id)
{
    return usecase::sendToBox(household.workplace(), toCore(child), OwnSort::Item, toCore(id));
}

Outcome withdrawItem(Household &household, const QString &child, const QString &id)
{
    return usecase::withdrawFromBox(household.workplace(), toCore(child), OwnSort::Item,
                                    toCore(id));
}

} // namespace lidlark::mobile
