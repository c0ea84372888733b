#include "tests/words/translation_rules.h"

#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <map>

namespace lidlark::words {

namespace {

bool hasWord(const QString &text)
{
    static const QRegularExpression word(QStringLiteral("[A-Za-z]{4,}"));
    return text.contains(word);
}

QString nameOf(const SourceKey &key)
{
    return key.context + QStringLiteral(": \"") + key.source + u'"';
}

/// A line takes its direction from its first letter: with a name before all else, the name's.
bool leansOnAName(const QString &text, const QString &language)
{
    static const QRegularExpression begins(
        QStringLiteral("^[^\\p{L}\u200F]*(%[1-9]|\\p{Latin}.*\\p{Arabic})"));
    return QLocale(language).textDirection() == Qt::RightToLeft && text.contains(begins);
}

QStringList problemsOf(const Translated &message, const TranslationFile &file,
                       const QStringList &sameInEnglish)
{
    const bool empty = std::ranges::all_of(message.forms, &QString::isEmpty);
    if (empty)
        return message.unfinished ? QStringList() : QStringList{QStringLiteral("no words")};
    QStringList problems;
    if (message.forms.size() != (message.key.counted ? formsOf(file.language) : 1))
        problems.append(QStringLiteral("%1 forms").arg(message.forms.size()));
    const QStringList places = placesIn(message.key.source);
    for (const QString &form : message.forms) {
        if (placesIn(form) != places)
            problems.append(QStringLiteral("other places: ") + form);
        if (form == message.key.source && hasWord(form) && !sameInEnglish.contains(form))
            problems.append(QStringLiteral("still English"));
        if (leansOnAName(form, file.language))
            problems.append(QStringLiteral("begins with a place and without U+200F: ") + form);
    }
    return problems;
}

} // namespace

QStringList placesIn(const QString &text)
{
    static const QRegularExpression place(QStringLiteral("%[1-9n]"));
    QStringList places;
    for (auto found = place.globalMatch(text); found.hasNext();)
        places.append(found.next().captured());
    places.sort();
    places.removeDuplicates();
    return places;
}

QStringList problemsWith(const TranslationFile &file, const std::vector<SourceKey> &keys,
                         const QStringList &sameInEnglish)
{
    if (!file.problem.isEmpty())
        return {file.problem};
    QStringList problems;
    std::map<SourceKey, int> seen;
    for (const Translated &message : file.messages) {
        ++seen[message.key];
        const auto key = std::ranges::find_if(
            keys, [&](const SourceKey &one) { return one.place() == message.key.place(); });
        if (key == keys.end())
            problems.append(nameOf(message.key) + QStringLiteral(": nothing says it any more"));
        else if (key->counted != message.key.counted)
            problems.append(nameOf(message.key) + QStringLiteral(": numerus is wrong"));
        const QStringList its = problemsOf(message, file, sameInEnglish);
        for (const QString &problem : its)
            problems.append(nameOf(message.key) + QStringLiteral(": ") + problem);
    }
    for (const SourceKey &key : keys) {
        const auto found = seen.find(key);
        if (found == seen.end() || found->second != 1)
            problems.append(nameOf(key) + (found == seen.end() ? QStringLiteral(": missing")
                                                               : QStringLiteral(": twice")));
    }
    return problems;
}

} // namespace lidlark::words
