#include "language_choices.h"

#include "mobile/bridge/known_languages.h"

namespace lidlark::mobile {

int LanguageChoices::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(knownLanguages().size());
}

QVariant LanguageChoices::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const KnownLanguage &language = knownLanguages()[index.row()];
    switch (role) {
    case CodeRole:
        return language.code;
    case NameRole:
        return language.ownName;
    case UncheckedRole:
        return language.unchecked;
    case NaskhRole:
        return language.arabicScript;
    default:
        return {};
    }
}

QHash<int, QByteArray> LanguageChoices::roleNames() const
{
    return {
        {CodeRole, "code"}, {NameRole, "name"}, {UncheckedRole, "unchecked"}, {NaskhRole, "naskh"}};
}

bool LanguageChoices::isUnchecked(const QString &code) const
{
    const KnownLanguage *language = knownLanguage(code);
    return language != nullptr && !language->reviewed;
}

} // namespace lidlark::mobile
