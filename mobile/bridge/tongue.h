#pragma once

#include <QString>

#include "core/wording/sentence.h"
#include "mobile/bridge/spoken_language.h"

#include <vector>

namespace lidlark::mobile {

/// How the core's sentences are told in one language: its English words are the key, and so all the
/// way down. Names and what was typed stand as they are.
class Tongue
{
public:
    Tongue() = default;
    Tongue(const Tongue &) = delete;
    Tongue &operator=(const Tongue &) = delete;
    virtual ~Tongue() = default;

    [[nodiscard]] virtual const SpokenLanguage &language() const = 0;

    [[nodiscard]] QString tell(const wording::Sentence &sentence) const;
    /// Sentences that guard somebody, in one paragraph: while nobody has reviewed the language's
    /// words, all the English stands on a line of its own under them.
    [[nodiscard]] QString guard(const std::vector<wording::Sentence> &sentences) const;
    /// Words with the English on a line of its own under them.
    [[nodiscard]] QString underneath(const QString &words, const QString &english) const;

protected:
    /// The words for a key of the core. @param count what their form goes by; -1: one form only.
    [[nodiscard]] virtual QString wordsFor(const char *key, int count) const = 0;

private:
    [[nodiscard]] QString inPlace(const wording::Argument &argument) const;
};

} // namespace lidlark::mobile
