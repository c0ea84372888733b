#include "core/safety/form.h"

#include "core/catalogue/item_tags.h"
#include "core/safety/tag_groups.h"

#include <algorithm>

namespace lidlark::safety {

using catalogue::Activity;
using catalogue::ActivitySwap;
using catalogue::ItemKind;
using catalogue::ItemUse;
using catalogue::Tag;
using catalogue::TagSet;

namespace {

/// The swaps the activity lists for one item; more than the loader lets through are not tried.
std::vector<Part> swapsFor(const ItemUse &use, const Activity &activity,
                           const catalogue::Catalogue &catalogue)
{
    std::vector<Part> parts;
    int tried = 0;
    for (const ActivitySwap &swap : activity.swaps) {
        if (++tried > catalogue::swapLimit)
            break;
        const ItemKind *kind = swap.item == use.item ? catalogue.item(swap.with) : nullptr;
        if (kind)
            parts.push_back({&use, kind, &swap});
    }
    return parts;
}

void finish(Form &form, const Facts &facts)
{
    form.tags = cautionsOf(form, facts.situation.catalogue);
    form.swaps = static_cast<int>(std::count_if(form.parts.begin(), form.parts.end(),
                                                [](const Part &part) { return part.swapped(); }));
    form.floorMonths = form.activity->ageFloorMonths;
    for (const Part &part : form.parts) {
        if (part.swapped())
            form.floorMonths = std::max(form.floorMonths, part.swap->ageFloorMonths);
    }
}

bool isGone(const ItemKind *kind, const Facts &facts)
{
    return kind && !isOnHand(*kind, facts.situation);
}

} // namespace

TagSet cautionsOf(const Form &form, const catalogue::Catalogue &catalogue)
{
    TagSet kept;
    TagSet swappedOut;
    TagSet swappedIn;
    for (const Part &part : form.parts) {
        const ItemKind *original = part.swapped() ? catalogue.item(part.use->item) : part.kind;
        const TagSet brought = original ? catalogue::tagsBroughtBy(*original) : TagSet{};
        if (part.swapped()) {
            swappedOut = swappedOut | brought;
            swappedIn = swappedIn | part.kind->tags | part.swap->cautions;
        } else {
            kept = kept | brought;
        }
    }
    kept = kept | form.activity->madeTags;
    const TagSet leaving = swappedOut.without(kept).without(movementTags);
    return (form.activity->cautions | kept | swappedOut).without(leaving) | swappedIn;
}

Form formAsTheBoxStands(const Activity &activity, const Facts &facts)
{
    const catalogue::Catalogue &catalogue = facts.situation.catalogue;
    Form form;
    form.activity = &activity;
    for (const ItemUse &use : activity.items) {
        Part part{&use, catalogue.item(use.item)};
        if (isGone(part.kind, facts)) {
            for (const Part &swapped : swapsFor(use, activity, catalogue)) {
                if (!part.swapped() && isOnHand(*swapped.kind, facts.situation))
                    part = swapped;
            }
        }
        form.parts.push_back(part);
    }
    finish(form, facts);
    form.tagsAsTheBoxStands = form.tags;
    return form;
}

std::vector<Form> formsOf(const Activity &activity, const Facts &facts)
{
    const catalogue::Catalogue &catalogue = facts.situation.catalogue;
    std::vector<Form> forms(1);
    forms.front().activity = &activity;
    for (const ItemUse &use : activity.items) {
        std::vector<Form> longer;
        for (Form &form : forms) {
            for (const Part &swapped : swapsFor(use, activity, catalogue)) {
                longer.push_back(form);
                longer.back().parts.push_back(swapped);
            }
            form.parts.push_back({&use, catalogue.item(use.item)});
        }
        forms.insert(forms.end(), std::make_move_iterator(longer.begin()),
                     std::make_move_iterator(longer.end()));
    }
    const TagSet asTheBoxStands = formAsTheBoxStands(activity, facts).tags;
    for (Form &form : forms) {
        finish(form, facts);
        form.tagsAsTheBoxStands = asTheBoxStands;
    }
    std::stable_sort(forms.begin(), forms.end(),
                     [](const Form &a, const Form &b) { return a.swaps < b.swaps; });
    return forms;
}

} // namespace lidlark::safety
