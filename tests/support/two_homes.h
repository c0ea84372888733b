#pragma once

#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"

#include "tests/support/phone.h"

namespace lidlark::test {

/// job.md scenario 12: what both tests of it ask of a phone of Effie's.

inline usecase::TodayMenu effiesMenu(Phone &phone, bool boxNotHere = false)
{
    usecase::Workplace workplace = phone.workplace();
    usecase::MenuRequest request;
    request.child = "Effie";
    request.boxNotHere = boxNotHere;
    return *usecase::suggestToday(workplace, request);
}

inline usecase::Family effiesFamily(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    return *usecase::loadFamily(workplace, "Effie");
}

/// activities.md 2.1 and 1.4 for a nine-month-old in the room, and no box: the first entry that
/// breaks them; empty: none does.
inline std::string unfitForABabyWithoutTheBox(const usecase::TodayMenu &menu)
{
    using enum catalogue::Tag;
    const catalogue::TagSet never{Small, Coin,  Balloon, Elastic, Foam,
                                  Foil,  Straw, Sticker, Cord,    Dough};
    for (const safety::Admitted &admitted : menu.gated.admitted) {
        for (const catalogue::ItemUse &use : admitted.items()) { // a towel for the band is fine
            if (use.source != catalogue::Source::Home)
                return admitted.activity().id.value + ": " + use.item.value;
        }
        if (!(admitted.cautions() & never).empty())
            return admitted.activity().id.value;
    }
    return {};
}

inline bool isAdmitted(const usecase::TodayMenu &menu, const char *activity)
{
    return std::ranges::any_of(menu.gated.admitted, [activity](const auto &admitted) {
        return admitted.activity().id.value == activity;
    });
}

inline bool effiePlays(Phone &phone, const char *activity)
{
    usecase::Workplace workplace = phone.workplace();
    const auto play = usecase::startPlay(workplace, {"Effie", {activity}, {}, std::nullopt});
    return play && usecase::putBack(workplace, *play, {}, {}).ok();
}

inline bool effiesBoxIs(Phone &phone, const char *home, const char *words)
{
    usecase::Workplace workplace = phone.workplace();
    return usecase::sayPlace(workplace, "Effie", home, words).ok();
}

} // namespace lidlark::test
