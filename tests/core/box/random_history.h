#pragma once

#include <rapidcheck.h>

#include "writing_phone.h"

#include <array>
#include <map>
#include <ostream>
#include <set>

namespace lidlark::test {

/// One random act on one of five phones.
struct Act {
    int phone = 0;
    int what = 0;
    int play = 0;
    int amount = 0;
    int minutes = 0; ///< That pass before it.
};

inline std::ostream &operator<<(std::ostream &stream, const Act &act)
{
    return stream << '{' << act.phone << ", " << act.what << ", " << act.play << ", " << act.amount
                  << ", " << act.minutes << '}';
}

inline rc::Gen<std::vector<Act>> anyActs()
{
    return rc::gen::container<std::vector<Act>>(
        rc::gen::build<Act>(rc::gen::set(&Act::phone, rc::gen::inRange(0, 5)),
                            rc::gen::set(&Act::what, rc::gen::inRange(0, 16)),
                            rc::gen::set(&Act::play, rc::gen::inRange(0, 6)),
                            rc::gen::set(&Act::amount, rc::gen::inRange(0, 4)),
                            rc::gen::set(&Act::minutes, rc::gen::inRange(1, 90))));
}

/// Five phones that act by themselves and meet now and then. Each holds its own set of events: what
/// it has not received it knows nothing of. Clocks: one right, one 40 minutes fast, one two days
/// ahead, one three years slow, one five minutes slow.
class FivePhones
{
public:
    FivePhones()
    {
        for (const char *name : {"ruth", "gran", "aaron", "kirsty", "morven"})
            m_phones.push_back({name});
    }

    void act(const Act &act)
    {
        m_now += act.minutes * minuteMs;
        const auto at = static_cast<std::size_t>(act.phone);
        const std::int64_t ms = clockOf(at);
        const std::string play = "play-" + std::to_string(act.play);
        using enum box::ExceptionKind;
        switch (act.what) {
        case 0:
        case 1:
            return outcome(at, play, UsedUp, act.amount);
        case 2:
            return outcome(at, play, Lost, act.amount);
        case 3:
            return outcome(at, play, StillInUse, act.amount);
        case 4:
            return write(at, journal::Kind::Count, fieldsOf(box::Counted{eyes, act.amount + 2, 0}),
                         ms);
        case 5:
            return write(at, journal::Kind::Found, fieldsOf(box::Found{eyes, act.amount + 1}), ms);
        case 6:
            return write(at, journal::Kind::Outcome, fieldsOf(box::Outcome{{play}, eyes, {}, true}),
                         ms);
        case 7:
            return write(at, journal::Kind::Exception,
                         fieldsOf(box::LooseException{eyes, Broken, act.amount + 1, {}}), ms);
        case 8:
            return write(at, journal::Kind::CountedIn,
                         fieldsOf(box::CountedIn{eyes, act.play % 2, act.amount + 1}), ms);
        case 9:
            return act.play == 0 ? write(at, journal::Kind::TakenOut,
                                         fieldsOf(box::TakenOut{eyes, "latex"}), ms)
                                 : outcome(at, play, UsedUp, 1);
        case 10:
            return answer(at, act);
        case 11:
        case 12:
            return takeBack(at, act);
        default:
            return meet(at, static_cast<std::size_t>((act.phone + 1 + act.amount) % 5));
        }
    }

    [[nodiscard]] const std::vector<journal::Event> &eventsOf(std::size_t phone) const
    {
        return m_phones[phone].events;
    }
    [[nodiscard]] std::size_t phones() const { return m_phones.size(); }

    /// Everything that anybody has written.
    [[nodiscard]] std::vector<journal::Event> all() const { return m_all; }

private:
    struct Held {
        std::string name;
        std::vector<journal::Event> events{};
        std::map<std::string, std::uint64_t> upTo{}; ///< Received without a gap, by device.
        std::uint64_t counter = 0;
    };

    [[nodiscard]] std::int64_t clockOf(std::size_t phone) const
    {
        static constexpr std::array<std::int64_t, 5> wrongBy{
            0, 40 * minuteMs, 2 * dayMs, std::int64_t{-3} * 365 * dayMs, -5 * minuteMs};
        return m_now + wrongBy[phone];
    }

    void write(std::size_t phone, journal::Kind kind, std::string fields, std::int64_t ms)
    {
        Held &held = m_phones[phone];
        journal::Event event;
        event.lane = {journal::LaneKind::Box, "b-fin"};
        event.device = {held.name};
        event.counter = ++held.counter;
        event.instant = {ms, 0};
        event.when = dayPartAt(ms, 0);
        event.author = held.name;
        event.kind = kind;
        event.fields = std::move(fields);
        held.events.push_back(event);
        held.upTo[held.name] = held.counter;
        m_all.push_back(event);
    }

    void outcome(std::size_t phone, const std::string &play, box::ExceptionKind kind, int pieces)
    {
        box::Exceptions exceptions;
        exceptions.set(kind, pieces);
        write(phone, journal::Kind::Outcome,
              fieldsOf(box::Outcome{{play}, eyes, exceptions, false}), clockOf(phone));
    }

    void answer(std::size_t phone, const Act &act)
    {
        const box::ItemLedger ledger = fold(6, m_phones[phone].events);
        if (ledger.questions.empty())
            return;
        const box::Question &question =
            ledger.questions[static_cast<std::size_t>(act.play) % ledger.questions.size()];
        const auto answers = box::answersOf(question);
        write(
            phone, journal::Kind::Answer,
            fieldsOf(box::Answered{eyes, question.id,
                                   answers[static_cast<std::size_t>(act.amount) % answers.size()]}),
            clockOf(phone));
    }

    /// One of the latest words that give way to this phone's own, a taking back among them: then
    /// something is put in again.
    void takeBack(std::size_t phone, const Act &act)
    {
        std::vector<const journal::Event *> own;
        journal::Event taking;
        taking.lane = {journal::LaneKind::Box, "b-fin"};
        taking.device = {m_phones[phone].name};
        taking.author = m_phones[phone].name;
        taking.when = dayPartAt(clockOf(phone), 0);
        for (const journal::Event &event : m_phones[phone].events) {
            if (journal::givesWayTo(event, taking))
                own.push_back(&event);
        }
        if (own.empty())
            return;
        const auto back = static_cast<std::size_t>(act.play + act.amount) % own.size();
        write(phone, journal::Kind::TakenBack,
              journal::fieldsOfTakingBack(*own[own.size() - 1 - back]), clockOf(phone));
    }

    /// @p phone takes in what the other holds, in whatever order it lies there.
    void meet(std::size_t phone, std::size_t other)
    {
        if (phone == other)
            return;
        Held &held = m_phones[phone];
        journal::Ahead ahead;
        bool news = false;
        for (const journal::Event &event : m_phones[other].events) {
            if (event.counter <= held.upTo[event.device.value])
                continue;
            held.events.push_back(event);
            news = news || event.kind != journal::Kind::Met;
            const std::int64_t gap = event.instant.ms - clockOf(phone);
            if (gap > journal::leastGapMs)
                ahead[event.device.value] = std::max(ahead[event.device.value], gap);
        }
        for (const auto &[device, counter] : m_phones[other].upTo)
            held.upTo[device] = std::max(held.upTo[device], counter);
        if (!news)
            return;
        auto covered = held.upTo;
        covered.erase(held.name);
        write(phone, journal::Kind::Met, journal::metFields(covered, ahead), clockOf(phone));
    }

    std::vector<Held> m_phones;
    std::vector<journal::Event> m_all;
    std::int64_t m_now = 20'000 * dayMs;
};

} // namespace lidlark::test
