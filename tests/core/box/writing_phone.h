#pragma once

#include "core/box/item_readings.h"
#include "core/box/piece_events.h"
#include "core/box/request_events.h"
#include "core/journal/meetings.h"
#include "core/journal/take_backs.h"

#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

namespace lidlark::test {

inline const ItemId eyes{"eyes"};
inline constexpr std::int64_t minuteMs = 60'000;
inline constexpr std::int64_t hourMs = 60 * minuteMs;
inline constexpr std::int64_t dayMs = 24 * hourMs;

/// Writes events of one item into a log that all phones share, as a phone would.
class WritingPhone
{
public:
    WritingPhone(std::string device, std::vector<journal::Event> &log)
        : m_device(std::move(device)), m_log(log)
    {
    }

    journal::Event &say(journal::Kind kind, std::string fields, std::int64_t ms)
    {
        journal::Event event;
        event.lane = {journal::LaneKind::Box, "b-fin"};
        event.device = {m_device};
        event.counter = ++m_counter;
        event.instant = {ms, 0};
        event.when = dayPartAt(ms, 0);
        event.author = m_device;
        event.kind = kind;
        event.fields = std::move(fields);
        m_log.push_back(event);
        return m_log.back();
    }

    void outcome(const char *play, std::initializer_list<std::pair<box::ExceptionKind, int>> values,
                 std::int64_t ms, bool weak = false)
    {
        box::Exceptions exceptions;
        for (const auto &[kind, count] : values)
            exceptions.set(kind, count);
        say(journal::Kind::Outcome, fieldsOf(box::Outcome{{play}, eyes, exceptions, weak}), ms);
    }
    void usedUp(const char *play, int pieces, std::int64_t ms)
    {
        outcome(play, {{box::ExceptionKind::UsedUp, pieces}}, ms);
    }
    void gone(box::ExceptionKind kind, int pieces, std::int64_t ms)
    {
        say(journal::Kind::Exception, fieldsOf(box::LooseException{eyes, kind, pieces, {}}), ms);
    }
    void count(int inBox, int out, std::int64_t ms)
    {
        say(journal::Kind::Count, fieldsOf(box::Counted{eyes, inBox, out}), ms);
    }
    void found(int pieces, std::int64_t ms)
    {
        say(journal::Kind::Found, fieldsOf(box::Found{eyes, pieces}), ms);
    }
    void takenOut(std::int64_t ms)
    {
        say(journal::Kind::TakenOut, fieldsOf(box::TakenOut{eyes, "latex"}), ms);
    }
    void countedIn(int round, int pieces, std::int64_t ms)
    {
        say(journal::Kind::CountedIn, fieldsOf(box::CountedIn{eyes, round, pieces}), ms);
    }
    void request(int round, box::RequestStep step, std::int64_t ms)
    {
        say(journal::Kind::Request, fieldsOf(box::RequestSaid{eyes, round, step, {}}), ms);
    }
    void answer(const std::string &question, const std::string &answer, std::int64_t ms)
    {
        say(journal::Kind::Answer, fieldsOf(box::Answered{eyes, question, answer}), ms);
    }
    /// Takes in all that @p other has written, and notes how far its clock is ahead.
    void meets(const WritingPhone &other, std::int64_t ms, std::int64_t aheadMs = 0)
    {
        const journal::Ahead ahead =
            aheadMs > 0 ? journal::Ahead{{other.m_device, aheadMs}} : journal::Ahead{};
        say(journal::Kind::Met, journal::metFields({{other.m_device, other.m_counter}}, ahead), ms);
    }

    [[nodiscard]] const std::string &device() const { return m_device; }
    [[nodiscard]] std::uint64_t counter() const { return m_counter; }

private:
    std::string m_device;
    std::vector<journal::Event> &m_log;
    std::uint64_t m_counter = 0;
};

inline box::ItemLedger fold(int packed, const std::vector<journal::Event> &log)
{
    return box::foldItem({packed, Day{}}, journal::withoutTakenBack(log), journal::Meetings(log));
}

} // namespace lidlark::test
