#include "tests/fuzz/target.h"

#include "core/sync/invitation.h"
#include "core/sync/join_words.h"
#include "core/sync/typed_code.h"
#include "core/sync/web_url.h"

#include <algorithm>

namespace lidlark::fuzz {

namespace {

using sync::JoinSecret;

std::string spelled(const JoinSecret &secret)
{
    std::string text;
    for (const std::string_view word : sync::wordsOf(secret))
        text.append(word).append(" ");
    return text;
}

void checkProblem(const sync::WordProblem &problem)
{
    using Kind = sync::WordProblem::Kind;
    must((problem.kind == Kind::Unknown) == !problem.unknown.empty(),
         "words that are not in the list are named, and no others");
    for (const sync::UnknownWord &word : problem.unknown) {
        must(word.place >= 1 && word.place <= problem.words, "a word has its place");
        must(!sync::joinWordAt(word.typed), "an unknown word is not in the list");
        for (const std::string_view near : word.nearest)
            must(sync::joinWordAt(near).has_value(), "what is near is in the list");
    }
}

void readWords(std::string_view typed)
{
    const auto answer = sync::secretFromWords(typed);
    if (const auto *problem = std::get_if<sync::WordProblem>(&answer))
        return checkProblem(*problem);
    const auto &secret = std::get<JoinSecret>(answer);
    const auto again = sync::secretFromWords(spelled(secret));
    const auto *same = std::get_if<JoinSecret>(&again);
    must(same != nullptr && same->equals(secret), "a secret's words are read again");
    must(sync::secretOf(sync::numbersOf(secret)).equals(secret), "numbers hold all of a secret");
}

void readSquares(std::string_view text)
{
    const auto answer = sync::invitationFromQrText(text);
    const auto *invitation = std::get_if<sync::Invitation>(&answer);
    if (invitation == nullptr)
        return;
    must(sync::qrTextOf(*invitation) == std::string(text), "no other spelling is read");
    // As libcurl reads it, which is what goes there.
    const auto url = sync::readUrl(invitation->place);
    must(!url || (url->user.empty() && url->password.empty() && !url->hasMore),
         "nobody gets in anywhere by what is shown");
}

} // namespace

void joinCode(std::string_view bytes)
{
    readWords(bytes);
    // A recovery sheet has two rows (core/cli/sheet_command.cpp).
    const std::size_t slash = bytes.find('/');
    if (slash != std::string_view::npos) {
        readWords(bytes.substr(0, slash));
        readWords(bytes.substr(slash + 1));
    }
    readSquares(bytes);
}

} // namespace lidlark::fuzz
