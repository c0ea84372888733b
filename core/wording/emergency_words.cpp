#include "core/wording/emergency_words.h"

namespace lidlark::wording {

Sentence emergencyFirstLine(const std::string &number)
{
    if (number.empty())
        return {"Call your local emergency number.", {}};
    return {"Call your local emergency number: %1.", {number}};
}

Sentence troubleName(Trouble trouble)
{
    switch (trouble) {
    case Trouble::Airway:
        return {"Something may be in the mouth, nose, ear or throat", {}};
    case Trouble::Swallowed:
        return {"Something was swallowed", {}};
    case Trouble::Breathing:
        return {"Trouble breathing, swelling or rash", {}};
    case Trouble::Eye:
        break;
    }
    return {"Something splashed in an eye", {}};
}

std::vector<Sentence> troubleWords(Trouble trouble)
{
    switch (trouble) {
    case Trouble::Airway:
        return {
            {"Cannot cough, cry, speak or breathe, or will not wake: that is an emergency. Call "
             "now.",
             {}},
            {"Coughing hard? Let them go on coughing, and stay with them.", {}},
            {"Do not feel about in the mouth.", {}},
            {"If it was swallowed: call the emergency number or the poison line now, even if "
             "your child seems well.",
             {}},
            {"Learn first aid from a trained instructor.", {}}};
    case Trouble::Swallowed:
        return {{"Call the emergency number or the poison line now, even if your child seems well.",
                 {}},
                {"A magnet or a button battery: go to hospital without waiting.", {}},
                {"A coin may be a button battery: treat it as one.", {}},
                {"The same for any battery, a small thing you do not know, foam, or a mouthful of "
                 "salty dough: call now.",
                 {}},
                {"Trouble breathing, drooling or pain: call the emergency number.", {}}};
    case Trouble::Breathing:
        return {{"Trouble breathing, swelling, fainting: emergency number now.", {}},
                {"Swollen lips or a rash all over: emergency number too.", {}},
                {"It can come from latex, food or dough. Say what was touched or eaten.", {}}};
    case Trouble::Eye:
        break;
    }
    return {{"Rinse the eye gently with lukewarm water, at least 15 minutes.", {}},
            {"Then call the poison line.", {}}};
}

Sentence callNumber(const std::string &number)
{
    return {"Call %1", {number}};
}

Sentence callPoisonLine(const std::string &number)
{
    return {"Call the poison line, %1", {number}};
}

} // namespace lidlark::wording
