#pragma once

#include "core/base/entropy.h"
#include "core/box/box_events.h"
#include "core/box/piece_events.h"
#include "core/box/request_events.h"
#include "core/checkin/checkin_events.h"
#include "core/journal/event.h"
#include "core/journal/seen.h"
#include "core/journal/take_backs.h"
#include "core/play/grading_events.h"
#include "core/play/our_way.h"
#include "core/play/play_events.h"

#include <map>
#include <random>
#include <string>
#include <utility>
#include <vector>

namespace lidlark::bench {

/// One device of the family that writes.
struct Writer {
    DeviceId device;
    std::string person;
    bool plays = true; ///< Lives in the home; else the therapist's.
};

/// What one device has written in one lane, in its order.
using Written = std::map<std::pair<journal::Lane, DeviceId>, std::vector<journal::Event>>;

/// Years of a family's events, their fields by the functions that the app writes them with, in the
/// proportions that thirty days of bench_scale come to: of a hundred, some twenty each are kites,
/// offers, and plays begun and ended, as many say who has met whom, and the rest is what was
/// noticed, counted, used up, lost, found, asked for and sent.
class YearsOfPlay
{
public:
    /// @param upTo by lane and device, the counter of what was written before.
    YearsOfPlay(std::vector<Writer> writers,
                std::map<std::pair<journal::Lane, DeviceId>, std::uint64_t> upTo, unsigned seed)
        : m_writers(std::move(writers)), m_counters(std::move(upTo)), m_chance(seed),
          m_ids("years " + std::to_string(seed))
    {
    }

    /// @param events how many at least, of all devices together: whole days. @param from the first
    /// morning.
    Written write(std::size_t events, std::int64_t from)
    {
        for (m_now = from; m_written < events; m_now += msPerDay)
            liveADay();
        return std::move(m_lanes);
    }

    [[nodiscard]] std::int64_t end() const { return m_now; }

private:
    using Kind = journal::Kind;
    static inline const journal::Lane box{journal::LaneKind::Box, "b-fin"};
    static inline const journal::Lane home{journal::LaneKind::Home, "h-fin"};
    static inline const journal::Lane checkIns{journal::LaneKind::CheckIns, "h-fin"};
    static inline const ChildId child{"c-fin"};

    int below(int limit) { return static_cast<int>(m_chance() % static_cast<unsigned>(limit)); }
    template <class List> const auto &oneOf(const List &list)
    {
        return list[static_cast<std::size_t>(below(static_cast<int>(list.size())))];
    }
    const ItemId &item()
    {
        static const std::vector<ItemId> items{{"eyes"},  {"pegs"},  {"crayons"}, {"pompoms"},
                                               {"bands"}, {"dough"}, {"straws"},  {"stickers"}};
        return oneOf(items);
    }
    ActivityId activity()
    {
        static const std::vector<std::string> names{
            "dough-forecast", "two-hand-tides", "slow-oars",    "hidden-harbour-lights",
            "snip-hedge",     "grocery-porter", "slow-sky-taps"};
        return {oneOf(names)};
    }

    /// One act in one lane: all but its first event name the first.
    void say(const Writer &writer, const journal::Lane &lane,
             const std::vector<std::pair<Kind, std::string>> &sayings)
    {
        std::uint64_t first = 0;
        for (const auto &[kind, fields] : sayings) {
            const std::uint64_t counter = ++m_counters[{lane, writer.device}];
            const bool further = first != 0 && journal::canBeTakenBack(kind);
            const DayPart when = dayPartAt(m_at, 0);
            const bool untimed = lane.kind == journal::LaneKind::CheckIns || kind == Kind::Offered;
            const Instant instant =
                untimed ? Instant{firstMomentMs(when, 0), 0} : Instant{++m_at, 0};
            m_lanes[{lane, writer.device}].push_back(
                {lane, writer.device, counter, instant, when, 0, writer.person, kind,
                 further ? journal::fieldsWith(fields, first) : fields});
            if (first == 0 && journal::canBeTakenBack(kind))
                first = counter;
            ++m_written;
        }
    }

    void liveADay()
    {
        for (const int hour : {7, 15, 18}) {
            m_at = m_now + hour * msPerHour + below(60) * msPerMinute;
            const Writer *player = &oneOf(m_writers);
            while (!player->plays)
                player = &oneOf(m_writers);
            play(*player);
            if (below(10) == 0)
                tend(*player);
            everybodyMeets();
        }
        if (dayPartAt(m_now, 0).day.number % 7 == 0)
            weekly();
    }

    void play(const Writer &who)
    {
        const PlayId play{m_ids.freshId()};
        const ActivityId chosen = activity();
        const checkin::CheckIn entry{
            m_ids.freshId(),         child, {}, static_cast<checkin::Kite>(below(5)),
            checkin::ShownBy::Child, {},    {}};
        checkin::CheckIn pair = entry;
        pair.after = static_cast<checkin::Kite>(below(5));
        pair.activity = chosen;
        say(who, home, {{Kind::Offered, play::fieldsOfOffered(child, activity())}});
        say(who, home, {{Kind::Offered, play::fieldsOfOffered(child, activity())}});
        say(who, home, {{Kind::Offered, play::fieldsOfOffered(child, chosen)}});
        say(who, checkIns, {{Kind::CheckIn, checkin::fieldsOf(entry)}});
        say(who, home,
            {{Kind::PlayStarted, play::fieldsOf(play::Started{play, child, chosen, 1})}});
        m_at += 6 * msPerMinute;
        const bool gone = below(4) == 0;
        if (gone)
            say(who, box,
                {{Kind::Outcome, box::fieldsOf(box::Outcome{play, item(), some(), false})}});
        say(who, home,
            {{Kind::PlayEnded, play::fieldsOfEnding(play, gone ? play::Ending::SomethingDifferent
                                                               : play::Ending::AllBack)}});
        say(who, checkIns, {{Kind::CheckIn, checkin::fieldsOf(pair)}});
        if (below(3) == 0)
            say(who, home,
                {{Kind::Reaction,
                  play::fieldsOfReaction(play, static_cast<play::Phrase>(below(3)))}});
        if (below(5) == 0)
            say(who, home, {{Kind::Grading, play::fieldsOf(child, chosen, play::GradingUsed{})}});
    }

    box::Exceptions some()
    {
        box::Exceptions gone;
        gone.set(static_cast<box::ExceptionKind>(below(4)), 1 + below(2));
        return gone;
    }

    /// What is noted beside the plays.
    void tend(const Writer &who)
    {
        m_at += 20 * msPerMinute;
        switch (below(4)) {
        case 0:
            return say(who, box, {{Kind::Found, box::fieldsOf(box::Found{item(), 1})}});
        case 1:
            return say(who, box,
                       {{Kind::Hygiene,
                         box::fieldsOf(box::HygieneSaid{item(), box::HygieneMark::Washed})}});
        case 2:
            return say(who, home,
                       {{Kind::OurWay,
                         play::fieldsOfOurWay(child, activity(), "on the stairs, one each")}});
        default:
            return say(who, box,
                       {{Kind::Exception, box::fieldsOf(box::LooseException{
                                              item(), box::ExceptionKind::UsedUp, 1, {}})}});
        }
    }

    /// Four counts in one act; something is asked for, packed and counted in.
    void weekly()
    {
        m_at = m_now + 19 * msPerHour;
        const Writer &parent = m_writers.at(1);
        std::vector<std::pair<Kind, std::string>> counts;
        for (int i = 0; i < 4; ++i)
            counts.emplace_back(Kind::Count, box::fieldsOf(box::Counted{item(), 3 + below(4), 0}));
        say(parent, box, counts);
        const ItemId &wanted = item();
        const int round = m_rounds[wanted]++;
        using box::RequestStep;
        say(parent, box,
            {{Kind::Request,
              box::fieldsOf(box::RequestSaid{wanted, round, RequestStep::Asked, {}})}});
        m_at += msPerHour;
        say(m_writers.front(), box,
            {{Kind::Request,
              box::fieldsOf(box::RequestSaid{wanted, round, RequestStep::Packed, {}})}});
        m_at += msPerHour;
        say(parent, box, {{Kind::CountedIn, box::fieldsOf(box::CountedIn{wanted, round, 3})}});
        everybodyMeets();
    }

    /// Half of them, that is: each says so where others have written since it last did.
    void everybodyMeets()
    {
        m_at += msPerHour;
        for (const Writer &writer : m_writers) {
            if (below(2) == 0)
                continue;
            meetIn(writer, box);
            if (writer.plays)
                meetIn(writer, home);
        }
    }

    void meetIn(const Writer &writer, const journal::Lane &lane)
    {
        std::map<std::string, std::uint64_t> covered;
        std::uint64_t told = 0;
        for (const auto &[place, events] : m_lanes) {
            if (place.first != lane || place.second == writer.device || events.empty())
                continue;
            covered[place.second.value] = m_counters[place];
            for (auto event = events.rbegin(); event != events.rend(); ++event) {
                if (event->kind != Kind::Met) {
                    told += event->counter;
                    break;
                }
            }
        }
        std::uint64_t &last = m_told[{lane, writer.device}];
        if (told == last)
            return;
        last = told;
        say(writer, lane, {{Kind::Met, journal::metFields(covered)}});
    }

    std::vector<Writer> m_writers; ///< The therapist first, then a parent.
    std::map<std::pair<journal::Lane, DeviceId>, std::uint64_t> m_counters;
    std::map<std::pair<journal::Lane, DeviceId>, std::uint64_t> m_told;
    std::map<ItemId, int> m_rounds;
    std::mt19937 m_chance;
    SeededEntropy m_ids;
    Written m_lanes;
    std::size_t m_written = 0;
    std::int64_t m_now = 0;
    std::int64_t m_at = 0;
};

} // namespace lidlark::bench
