#include "core/sync/sync_words.h"

namespace lidlark::sync {

namespace {

using wording::Argument;
using wording::inDigits;
using wording::say;
using wording::sayCounted;
using wording::Sentence;

Argument someone(const std::string &who)
{
    return who.empty() ? Argument(Sentence{say("somebody in the crew"), {}}) : Argument(who);
}

Sentence unknownWord(const WordProblem &problem)
{
    const UnknownWord &word = problem.unknown.front();
    if (word.nearest.empty())
        return {say("\"%1\" is not a word of these codes. Look at it again on the other phone."),
                {word.typed}};
    return {say("\"%1\" is not a word of these codes. Did it say \"%2\"?"),
            {word.typed, std::string(word.nearest.front())}};
}

} // namespace

Sentence sentenceFor(Trouble trouble)
{
    switch (trouble) {
    case Trouble::Unreachable:
        return {say("The shared place cannot be reached now. Nothing is lost; Lidlark tries again "
                    "later."),
                {}};
    case Trouble::Refused:
        return {
            say("The shared place does not let this phone in. Check the name and the password."),
            {}};
    case Trouble::Full:
        return {say("The shared place is full. What you noted stays on this phone until there is "
                    "room."),
                {}};
    case Trouble::Locked:
        return {say("The shared place is busy. Lidlark tries again later."), {}};
    case Trouble::NotTrusted:
        return {say("The shared place cannot show that it is the one it says. Nothing was sent. "
                    "Check the address, or ask whoever runs it."),
                {}};
    case Trouble::Odd:
        break;
    }
    return {say("The shared place answered in a way that Lidlark does not understand. Check the "
                "address."),
            {}};
}

Sentence sentenceFor(const Finding &finding, const std::string &who)
{
    switch (finding.kind) {
    case FindingKind::Damaged:
        return {say("A part of what %1 shared is damaged, or was put in its place by somebody "
                    "else. It was not taken in."),
                {someone(who)}};
    case FindingKind::Newer:
        return {
            say("%1 uses a newer Lidlark. Bring this phone up to date to see what they shared."),
            {wording::withCapital(someone(who))}};
    case FindingKind::Forked:
    case FindingKind::OwnAhead:
        return {say("The phone of %1 was copied or set back to a backup. It has to be let in "
                    "again."),
                {someone(who)}};
    case FindingKind::Broken:
        return {
            say("What %1 shared does not follow on what was there before. It was not taken in."),
            {someone(who)}};
    case FindingKind::Missing:
        return {say("Something that %1 shared has not arrived here yet."), {someone(who)}};
    case FindingKind::Intruder:
        return {say("%1 is not in the crew any more. What came from there since was not taken in."),
                {wording::withCapital(someone(who))}};
    case FindingKind::WentBack:
        break;
    }
    return {say("The shared place has lost something that was there. This phone brings its part "
                "again."),
            {}};
}

Sentence sentenceFor(const WordProblem &problem)
{
    switch (problem.kind) {
    case WordProblem::Kind::Unknown:
        return unknownWord(problem);
    case WordProblem::Kind::TooFew:
        return {sayCounted("A code has nine words; here is only %1."),
                {inDigits(static_cast<int>(problem.words))}};
    case WordProblem::Kind::TooMany:
        return {say("A code has nine words; here are more."), {}};
    case WordProblem::Kind::Another:
        break;
    }
    return {say("These are nine good words, but one of them is another than was shown. Compare "
                "them with the other phone."),
            {}};
}

Sentence sentenceFor(BundleFault fault)
{
    switch (fault) {
    case BundleFault::Foreign:
        return {say("This is no file that Lidlark hands over. It was left as it is."), {}};
    case BundleFault::Newer:
        return {say("A newer Lidlark made this file. Bring this phone up to date, then open it "
                    "again."),
                {}};
    case BundleFault::TooLarge:
        return {say("This file is too large to be one that Lidlark hands over."), {}};
    case BundleFault::Torn:
        break;
    }
    return {say("This file is damaged or not all there. Ask for it again. Nothing was taken in."),
            {}};
}

std::optional<Sentence> sentenceFor(Match match)
{
    switch (match) {
    case Match::Well:
        return std::nullopt;
    case Match::Restored:
        return Sentence{say("This phone was set back to an older copy. It shares nothing until "
                            "somebody of the crew lets it in again."),
                        {}};
    case Match::Strange:
        break;
    }
    return Sentence{say("This store comes from another phone. It shares nothing until somebody of "
                        "the crew lets this phone in."),
                    {}};
}

Sentence copiedSentence()
{
    return {say("Another phone writes under the name of this one: one of them is a copy. This one "
                "shares nothing until somebody of the crew lets it in again."),
            {}};
}

Sentence outSentence()
{
    return {say("This phone is not in the crew any more. What it holds stays here; nothing new "
                "comes or goes."),
            {}};
}

Sentence noCodeSentence()
{
    return {say("No code is waiting, or its ten minutes are over. Make a new one."), {}};
}

Sentence noPlaceSentence()
{
    return {say("There is no shared place yet. Choose one under \"Shared place\"."), {}};
}

Sentence noFolderSentence()
{
    return {
        say("This folder is not there. Check how it is written, or put in the stick it lies on."),
        {}};
}

Sentence noFileSentence()
{
    return {
        say("This file cannot be opened. Check how it is written, or put in the stick it lies on."),
        {}};
}

Sentence noPictureSentence()
{
    return {
        say("No code can be read in this picture. Take it again, nearer and straight on, or type "
            "the nine words."),
        {}};
}

Sentence nobodyYetSentence()
{
    return {say("Nobody has used the code yet."), {}};
}

} // namespace lidlark::sync
