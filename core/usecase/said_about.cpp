#include "core/usecase/said_about.h"

#include "core/box/box_events.h"
#include "core/box/piece_events.h"
#include "core/journal/fields.h"

namespace lidlark::usecase {

using journal::Kind;

std::string registerOf(const journal::Event &event)
{
    std::string subject = journal::subjectOf(event);
    switch (event.kind) {
    case Kind::Outcome: {
        const auto outcome = box::readOutcome(event);
        return outcome ? subject + " outcome " + outcome->play.value : std::string();
    }
    case Kind::Opened: {
        const auto opened = box::readOpened(event);
        return opened ? subject + " opened " + opened->piece.value : std::string();
    }
    case Kind::Answer: {
        const auto answered = box::readAnswered(event);
        return answered ? subject + " answer " + answered->question : std::string();
    }
    case Kind::Limit:
        return subject + " limit";
    case Kind::PlayEnded:
        return subject + " ended";
    case Kind::Fact: // each author's own statement (events.md 8.2)
        return subject + " by " + event.author;
    case Kind::Place:
    case Kind::Grading:
    case Kind::GradingPin:
    case Kind::Planned:
    case Kind::OurWay:
    case Kind::Sharing:
        return subject;
    default:
        return {};
    }
}

} // namespace lidlark::usecase
