#include "mobile/bridge/tongue.h"

#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

/// What stands in a place of a sentence, one kind of argument after the other.
struct Told {
    const Tongue &tongue;

    QString operator()(const std::string &text) const { return fromCore(text); }
    QString operator()(const wording::Translated &words) const { return fromCore(words.text); }
    QString operator()(wording::Number number) const
    {
        const QString &code = tongue.language().code;
        return number.words && code == QLatin1String("en")
                   ? fromCore(wording::numberWord(number.value))
                   : numerals(QString::number(number.value), code);
    }
    QString operator()(wording::TimeOfDay time) const
    {
        return numerals(fromCore(wording::timeText(time)), tongue.language().code);
    }
    QString operator()(const wording::Sentence &sentence) const { return tongue.tell(sentence); }
};

} // namespace

QString Tongue::inPlace(const wording::Argument &argument) const
{
    QString text = std::visit(Told{*this}, argument.content);
    if (argument.beginning == wording::Beginning::Capital)
        text = capitalised(text);
    if (argument.beginning == wording::Beginning::Small)
        text = uncapitalised(text);
    const bool foreign = std::holds_alternative<std::string>(argument.content) ||
                         std::holds_alternative<wording::Translated>(argument.content);
    return foreign ? isolated(text, language().rightToLeft) : text;
}

QString Tongue::tell(const wording::Sentence &sentence) const
{
    const std::string_view key = sentence.english.text();
    if (key.empty())
        return {};
    const QString words = wordsFor(key.data(), sentence.plural().value_or(-1));
    std::vector<std::string> places;
    places.reserve(sentence.arguments.size());
    for (const wording::Argument &argument : sentence.arguments)
        places.push_back(toCore(inPlace(argument)));
    return fromCore(wording::fillIn(toCore(words), places));
}

QString Tongue::guard(const std::vector<wording::Sentence> &sentences) const
{
    QStringList words;
    QStringList english;
    for (const wording::Sentence &sentence : sentences) {
        words.append(tell(sentence));
        english.append(fromCore(wording::fill(sentence)));
    }
    const QString text = words.join(u' ');
    return language().reviewed ? text : underneath(text, english.join(u' '));
}

QString Tongue::underneath(const QString &words, const QString &english) const
{
    return words == english || english.isEmpty()
               ? words
               : words + u'\n' + isolatedEnglish(english, language().rightToLeft);
}

} // namespace lidlark::mobile
