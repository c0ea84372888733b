#include "core/box/question_look.h"

namespace lidlark::box {

namespace {

constexpr int daysSaid = 1; // an answer is read by whoever looks the next day

} // namespace

QuestionLook lookOf(const Question &question, const std::string &person, const DeviceId &device,
                    Day today)
{
    if (!question.isOpen())
        return today - question.answeredWhen.day <= daysSaid ? QuestionLook::Said
                                                             : QuestionLook::Gone;
    const bool mine = question.askedOf == person || question.askedOn == device;
    return mine || today > question.asked.day ? QuestionLook::Asks : QuestionLook::Waits;
}

} // namespace lidlark::box
