#include "core/wording/take_out_words.h"

#include "core/safety/avoided_tags.h"
#include "core/wording/emergency_words.h"

namespace lidlark::wording {

using child::Avoided;

std::vector<Sentence> homeLabel(const child::Avoidances &avoidances)
{
    const catalogue::TagSet avoided = safety::avoidedTags(avoidances);
    std::vector<Sentence> label;
    for (const Avoided what : {Avoided::Latex, Avoided::Wheat}) {
        if (avoided.has(child::tagOf(what)))
            label.push_back(homeLabelWord(what));
    }
    return label;
}

Sentence homeLabelWord(Avoided what)
{
    return what == Avoided::Latex ? Sentence{say("latex-free home"), {}}
                                  : Sentence{say("home without wheat"), {}};
}

Sentence freeHome(Avoided what)
{
    if (what == Avoided::Latex)
        return {say("This is a latex-free home now."), {}};
    return {say("This is a wheat-free home for play now."), {}};
}

Sentence takeThemOut(Avoided what)
{
    if (what == Avoided::Latex)
        return {say("Take these out of the house, then wash hands."), {}};
    return {say("Take these out of the house, then wash hands and wipe the table."), {}};
}

Sentence emergencyLine()
{
    return troubleWords(Trouble::Breathing).front();
}

Sentence lookAtHome(Avoided what)
{
    if (what == Avoided::Latex)
        return {
            say("At home, latex may also be in balloons, rubber gloves, some sticky tapes and soft "
                "squeezy toys. Ask of each stretchy thing: is it latex-free?"),
            {}};
    return {
        say("At home, wheat may also be in bought dough, flour paste, papier mache and pasta for "
            "play."),
        {}};
}

Sentence saidBy(const std::string &author, const std::string &person, const Sentence &day,
                int minuteOfDay)
{
    if (person.empty())
        return {say("%1 said so: %2, %3."), {author, day, TimeOfDay{minuteOfDay}}};
    return {say("%1 said so of %4: %2, %3."), {author, day, TimeOfDay{minuteOfDay}, person}};
}

Sentence stillInBox(int pieces)
{
    return {say("%1 in the box."), {withCapital(inWords(pieces))}};
}

Sentence standsIn(const std::string &name, bool asked)
{
    if (asked)
        return {say("In its place: %1, asked for."), {name}};
    return {say("In its place: %1."), {name}};
}

} // namespace lidlark::wording
