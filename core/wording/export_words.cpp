#include "core/wording/export_words.h"

namespace lidlark::wording {

namespace {

std::string together(const std::vector<std::string> &names)
{
    std::string all;
    for (const std::string &name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all;
}

ReadMePart whatIsInIt(const std::vector<std::string> &children, const std::string &person, Day made)
{
    return {
        {say("What is in this folder"), {}},
        {{say("All that this phone held about %1 on %2."), {together(children), toText(made)}},
         {say("The home sheet, the box and what came and went, plays, check-ins, goals, our own "
              "ways, notes to oneself, and each thing that was noted."),
          {}},
         {say("record.json has all of it, for programs. Each file that ends in .csv is one "
              "table of it, for a spreadsheet."),
          {}},
         {say("Days are written as year, month, day. In a table, words that begin with =, +, - "
              "or @ have an apostrophe before them, so that no spreadsheet takes them for a "
              "sum."),
          {}},
         {say("The notes to oneself are those of %1. Read them before you hand this folder on."),
          {person}}}};
}

ReadMePart whatIsNot()
{
    return {{say("What is not in it"), {}},
            {{say("What another home or another person keeps to themselves: this phone cannot read "
                  "it."),
              {}},
             {say("What was erased, and check-ins from more than 90 days ago."), {}},
             {say("On which day an activity was last offered. Lidlark keeps it so that each gets "
                  "its turn, and shows it to nobody."),
              {}},
             {say("The settings of this phone, and other families on it."), {}}}};
}

ReadMePart whatTheClinicKeeps()
{
    return {{say("What stays with the clinic"), {}},
            {{say("A clinic writes a record of its own about its work with a child. The law says "
                  "for how long it must keep that, so it stays there when you erase yours."),
              {}},
             {say("Ask the clinic for a copy of it, or to put something in it right."), {}}}};
}

ReadMePart keepItSafe()
{
    return {
        {say("Keep this folder safe"), {}},
        {{say("It is not locked: whoever opens it can read all of it, and it tells of a child's "
              "health. Delete it when you need it no more."),
          {}}}};
}

} // namespace

std::vector<ReadMePart> readMeOf(const std::vector<std::string> &children,
                                 const std::string &person, Day made)
{
    return {whatIsInIt(children, person, made), whatIsNot(), whatTheClinicKeeps(), keepItSafe()};
}

std::string readMeText(const std::vector<ReadMePart> &parts)
{
    std::string text;
    for (const ReadMePart &part : parts) {
        text += (text.empty() ? "" : "\r\n") + fill(part.head) + "\r\n\r\n";
        for (const Sentence &line : part.lines)
            text += fill(line) + "\r\n";
    }
    return text;
}

} // namespace lidlark::wording
