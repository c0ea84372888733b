#include "tests/fuzz/made_events.h"
#include "tests/fuzz/target.h"

#include "core/box/box_events.h"
#include "core/box/piece_events.h"
#include "core/box/request_events.h"
#include "core/child/goal_events.h"
#include "core/child/home_facts.h"
#include "core/crew/given_key.h"
#include "core/crew/member.h"
#include "core/crew/opening.h"
#include "core/journal/erasure.h"
#include "core/journal/seen.h"
#include "core/journal/take_backs.h"
#include "core/play/play_events.h"

namespace lidlark::fuzz {

namespace {

using journal::Event;

template <class Value>
void roundTrip(const Event &event, std::optional<Value> (*read)(const Event &))
{
    const std::optional<Value> value = read(event);
    if (!value)
        return;
    Event written = event;
    written.fields = fieldsOf(*value);
    const std::optional<Value> again = read(written);
    must(again && fieldsOf(*again) == written.fields, "fields are read as they were written");
}

std::optional<child::ChildGoal> readGoal(const Event &event)
{
    return child::goalFromFields(event.fields);
}

void readFields(const Event &event)
{
    roundTrip(event, journal::readErasure);
    roundTrip(event, crew::readMember);
    roundTrip(event, crew::readRemoval);
    roundTrip(event, crew::readOpening);
    roundTrip(event, crew::readGivenKey);
    roundTrip(event, box::readOutcome);
    roundTrip(event, box::readLooseException);
    roundTrip(event, box::readFound);
    roundTrip(event, box::readCounted);
    roundTrip(event, box::readRevision);
    roundTrip(event, box::readFloorChecked);
    roundTrip(event, box::readTakenOut);
    roundTrip(event, box::readAnswered);
    roundTrip(event, box::readOpened);
    roundTrip(event, box::readLeftOpen);
    roundTrip(event, box::readChecked);
    roundTrip(event, box::readKeepingLimit);
    roundTrip(event, box::readHygiene);
    roundTrip(event, box::readRequest);
    roundTrip(event, box::readCountedIn);
    roundTrip(event, child::readFact);
    roundTrip(event, play::readStarted);
    roundTrip(event, readGoal);
}

void readAbout(const Event &event)
{
    must(!journal::subjectOf(event).empty(), "an event is about something");
    const auto covered = journal::coveredBy(event);
    Event met = event;
    met.fields = journal::metFields(covered);
    must(journal::coveredBy(met) == covered, "what was seen is read as it was written");
    Event breath = event;
    breath.fields = journal::fieldsWith(event.fields, 7);
    must(journal::breathOf(breath) == 7, "a breath is read as it was written");
    Event taking = event;
    taking.kind = journal::Kind::TakenBack;
    taking.fields = journal::fieldsOfTakingBack(event);
    must(journal::takenBackBy(taking) == journal::identityOf(event), "what is named is found");
    must(journal::subjectOf(taking) == journal::subjectOf(event), "a word back has its subject");
}

void readAll(const Event &event)
{
    const std::string text = journal::canonicalText(event);
    const auto again = journal::eventFromText(text);
    must(again && *again == event, "an event is read as it was written");
    readFields(event);
    readAbout(event);
}

} // namespace

void event(std::string_view bytes)
{
    if (const auto read = journal::eventFromText(std::string(bytes))) {
        must(journal::canonicalText(*read) == bytes, "an event has one spelling");
        readAll(*read);
    }
    for (const Event &made : madeEvents(bytes))
        readAll(made);
}

} // namespace lidlark::fuzz
