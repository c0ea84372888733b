#include "mobile/bridge/sentence.h"

#include <QCoreApplication>

#include "mobile/bridge/text.h"
#include "mobile/bridge/tongue.h"

namespace lidlark::mobile {

namespace {

/// The language in force, by the translators that are installed.
class AppTongue : public Tongue
{
public:
    [[nodiscard]] const SpokenLanguage &language() const override { return spokenLanguage(); }

protected:
    [[nodiscard]] QString wordsFor(const char *key, int count) const override
    {
        return QCoreApplication::translate("core", key, nullptr, count);
    }
};

const Tongue &appTongue()
{
    static const AppTongue tongue;
    return tongue;
}

} // namespace

QString translated(const wording::Sentence &sentence)
{
    return appTongue().tell(sentence);
}

QString safetyText(const wording::Sentence &sentence)
{
    return safetyText(std::vector<wording::Sentence>{sentence});
}

QString safetyText(const std::vector<wording::Sentence> &sentences)
{
    return appTongue().guard(sentences);
}

QString withEnglish(const wording::Sentence &sentence)
{
    return appTongue().underneath(translated(sentence), fromCore(wording::fill(sentence)));
}

} // namespace lidlark::mobile
