#include "mobile/bridge/sentence.h"

#include <QCoreApplication>

#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/spoken_language.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

QString said(const std::string &text)
{
    return fromCore(text);
}

QString said(const wording::Translated &words)
{
    return fromCore(words.text);
}

QString said(wording::Number number)
{
    return number.words && speaksEnglish() ? fromCore(wording::numberWord(number.value))
                                           : numerals(number.value);
}

QString said(wording::TimeOfDay time)
{
    return numerals(fromCore(wording::timeText(time)));
}

QString said(const wording::Sentence &sentence)
{
    return translated(sentence);
}

QString saidInPlace(const wording::Argument &argument)
{
    QString text = std::visit([](const auto &content) { return said(content); }, argument.content);
    if (argument.beginning == wording::Beginning::Capital)
        text = capitalised(text);
    if (argument.beginning == wording::Beginning::Small)
        text = uncapitalised(text);
    const bool foreign = std::holds_alternative<std::string>(argument.content) ||
                         std::holds_alternative<wording::Translated>(argument.content);
    return foreign ? isolated(text) : text;
}

QString underneath(const QString &words, const QString &english)
{
    return words == english || english.isEmpty() ? words : words + u'\n' + isolatedEnglish(english);
}

} // namespace

QString translated(const wording::Sentence &sentence)
{
    const std::string_view key = sentence.english.text();
    if (key.empty())
        return {};
    const QString words =
        QCoreApplication::translate("core", key.data(), nullptr, sentence.plural().value_or(-1));
    std::vector<std::string> places;
    places.reserve(sentence.arguments.size());
    for (const wording::Argument &argument : sentence.arguments)
        places.push_back(toCore(saidInPlace(argument)));
    return fromCore(wording::fillIn(toCore(words), places));
}

QString safetyText(const wording::Sentence &sentence)
{
    return safetyText(std::vector<wording::Sentence>{sentence});
}

QString safetyText(const std::vector<wording::Sentence> &sentences)
{
    QStringList words;
    QStringList english;
    for (const wording::Sentence &sentence : sentences) {
        words.append(translated(sentence));
        english.append(fromCore(wording::fill(sentence)));
    }
    const QString text = words.join(u' ');
    return spokenLanguage().reviewed ? text : underneath(text, english.join(u' '));
}

QString withEnglish(const wording::Sentence &sentence)
{
    return underneath(translated(sentence), fromCore(wording::fill(sentence)));
}

} // namespace lidlark::mobile
