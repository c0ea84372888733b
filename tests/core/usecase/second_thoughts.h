#pragma once

#include "core/store/projector.h"
#include "core/usecase/noted_today.h"
#include "core/usecase/take_back.h"
#include "core/usecase/tend_item.h"
#include "tests/support/phone.h"

#include <memory>
#include <string>
#include <vector>

namespace lidlark::test {

/// Ruth's phone with Fin's box, on an evening.
inline std::unique_ptr<Phone> ruthsPhone()
{
    auto morven = therapistWith({"Fin"});
    auto ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
    ruth->meet(*morven);
    return ruth;
}

inline std::vector<usecase::Noted> notedOn(Phone &phone, const std::string &author = {})
{
    usecase::Workplace workplace = phone.workplace();
    auto noted = usecase::notedToday(workplace, "Fin", author);
    return noted ? *std::move(noted) : std::vector<usecase::Noted>();
}

inline Outcome takeBackLast(Phone &phone, const std::string &author = {})
{
    usecase::Workplace workplace = phone.workplace();
    const auto last = usecase::lastNotedBy(workplace, "Fin", author);
    return last ? usecase::takeBack(workplace, {"Fin", author, *last}) : Outcome(last.error());
}

inline Outcome putInFirst(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    for (const usecase::Noted &one : notedOn(phone)) {
        if (one.takenBack)
            return usecase::putInAgain(workplace,
                                       {"Fin", {}, journal::identityOf(one.events.front())});
    }
    return Error{ErrorCode::NotFound, "anything taken back"};
}

inline bool matches(Phone &phone)
{
    const auto same = store::Projector(phone.database).matchesRefold();
    return same && *same;
}

inline usecase::Family familyOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    return *usecase::loadFamily(workplace, "Fin");
}

inline Day islandDay(int dayOfJanuary)
{
    return *dayFrom({2027, 1, dayOfJanuary});
}

inline usecase::Tending tending(const char *item)
{
    return {"Fin", {}, {item}};
}

} // namespace lidlark::test
