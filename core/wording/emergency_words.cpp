#include "core/wording/emergency_words.h"

namespace lidlark::wording {

Sentence emergencyFirstLine(const std::string &number)
{
    if (number.empty())
        return {say("Call your local emergency number."), {}};
    return {say("Call your local emergency number: %1."), {number}};
}

Sentence troubleName(Trouble trouble)
{
    switch (trouble) {
    case Trouble::Airway:
        return {say("Something may be in the mouth, nose, ear or throat"), {}};
    case Trouble::Swallowed:
        return {say("Something was swallowed"), {}};
    case Trouble::Breathing:
        return {say("Trouble breathing, swelling or rash"), {}};
    case Trouble::Eye:
        break;
    }
    return {say("Something splashed in an eye"), {}};
}

Sentence ifSwallowed()
{
    return {say("If it was swallowed: call the emergency number or the poison line now, even if "
                "your child seems well."),
            {}};
}

std::vector<Sentence> troubleWords(Trouble trouble)
{
    switch (trouble) {
    case Trouble::Airway:
        return {{say("Cannot cough, cry, speak or breathe, or will not wake: that is an emergency. "
                     "Call "
                     "now."),
                 {}},
                {say("Coughing hard? Let them go on coughing, and stay with them."), {}},
                {say("Do not feel about in the mouth."), {}},
                ifSwallowed(),
                {say("Learn first aid from a trained instructor."), {}}};
    case Trouble::Swallowed:
        return {
            {say("Call the emergency number or the poison line now, even if your child seems "
                 "well."),
             {}},
            {say("A magnet or a button battery: go to hospital without waiting."), {}},
            {say("A coin may be a button battery: treat it as one."), {}},
            {say("The same for any battery, a small thing you do not know, foam, or a mouthful of "
                 "salty dough: call now."),
             {}},
            {say("Trouble breathing, drooling or pain: call the emergency number."), {}}};
    case Trouble::Breathing:
        return {{say("Trouble breathing, swelling, fainting: emergency number now."), {}},
                {say("Swollen lips or a rash all over: emergency number too."), {}},
                {say("It can come from latex, food or dough. Say what was touched or eaten."), {}}};
    case Trouble::Eye:
        break;
    }
    return {{say("Rinse the eye gently with lukewarm water, at least 15 minutes."), {}},
            {say("Then call the poison line."), {}}};
}

Sentence callNumber(const std::string &number)
{
    return {say("Call %1"), {number}};
}

Sentence callPoisonLine(const std::string &number)
{
    return {say("Call the poison line, %1"), {number}};
}

} // namespace lidlark::wording
