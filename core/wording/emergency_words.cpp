#include "core/wording/emergency_words.h"

namespace lidlark::wording {

namespace {

/// "Call the poison line", with the family's own number where there is one.
Sentence poisonCall(const std::string &poisonLine, const char *withNumber, const char *without)
{
    return poisonLine.empty() ? Sentence{without, {}} : Sentence{withNumber, {poisonLine}};
}

} // namespace

Sentence emergencyLead(const std::string &number)
{
    if (number.empty())
        return {"Call your local emergency number.", {}};
    return {"Call %1.", {number}};
}

Sentence emergencyName(Emergency emergency)
{
    switch (emergency) {
    case Emergency::Airway:
        return {"In the mouth, nose, ear or throat", {}};
    case Emergency::Swallowed:
        return {"Something was swallowed", {}};
    case Emergency::Reaction:
        return {"Swelling, rash or hard to breathe", {}};
    case Emergency::Eye:
        break;
    }
    return {"Something in the eye", {}};
}

std::vector<Sentence> emergencyLines(Emergency emergency, const std::string &poisonLine)
{
    switch (emergency) {
    case Emergency::Airway:
        return {
            {"Cannot cough, cry, speak or breathe, or will not wake: that is an emergency.", {}},
            {"Coughing hard? Let them go on coughing, and stay with them.", {}},
            {"Do not feel about in the mouth.", {}},
            {"Learn first aid from a trained teacher, before it is needed.", {}}};
    case Emergency::Swallowed:
        return {poisonCall(poisonLine,
                           "Call now, even if your child seems well. The poison line is %1.",
                           "Call the emergency number or the poison line now, even if your child "
                           "seems well."),
                {"A battery, a magnet, or a coin that may be a battery: go to hospital, do not "
                 "wait.",
                 {}},
                {"A coin, a small piece, foam or salty dough: call all the same.", {}},
                {"Trouble breathing, drooling or pain: that is an emergency.", {}}};
    case Emergency::Reaction:
        return {{"Trouble breathing, swelling, fainting: emergency number now.", {}},
                {"Take away the latex, the food or the dough.", {}}};
    case Emergency::Eye:
        break;
    }
    return {{"Rinse gently with lukewarm water, for at least 15 minutes.", {}},
            poisonCall(poisonLine, "Then call the poison line: %1.", "Then call the poison line.")};
}

} // namespace lidlark::wording
