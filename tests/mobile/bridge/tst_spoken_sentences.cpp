#include <QtTest>

#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/safety_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/spoken_language.h"
#include "tests/mobile/bridge/stand_in_translator.h"

#include <QLocale>

using namespace lidlark;
using namespace lidlark::mobile;
using namespace lidlark::wording;

namespace {

// The Unicode Standard, UAX #9, 2.4: the explicit directional isolates.
const QString fsi(QChar(0x2068));
const QString lri(QChar(0x2066));
const QString pdi(QChar(0x2069));

const SpokenLanguage polish{QStringLiteral("pl"), true, false};
const SpokenLanguage urdu{QStringLiteral("ur"), false, true};

Sentence eyesMissing(int pieces)
{
    return {sayCounted("%1 %2 are missing."), {withCapital(inWords(pieces)), std::string("łódki")}};
}

} // namespace

/// Guards how a sentence of the core is put into another language: all the way down, with that
/// language's numbers, and with the English under what guards somebody until it was reviewed.
class TestSpokenSentences : public QObject
{
    Q_OBJECT

private:
    StandInTranslator m_words;

private slots:
    void init()
    {
        m_words.forget();
        QVERIFY(QCoreApplication::installTranslator(&m_words));
        setSpokenLanguage(polish);
    }

    void cleanup()
    {
        QCoreApplication::removeTranslator(&m_words);
        setSpokenLanguage({});
    }

    void englishNeedsNoTranslation()
    {
        setSpokenLanguage({});
        QCOMPARE(translated(eyesMissing(4)), QStringLiteral("Four łódki are missing."));
        QCOMPARE(translated(eyesMissing(13)), QStringLiteral("13 łódki are missing."));
        QCOMPARE(translated(Sentence{}), QString());
        QCOMPARE(safetyText(eyesMissing(4)), translated(eyesMissing(4)));
    }

    void aSentenceInASentenceIsTranslatedToo()
    {
        m_words.add("%1 noted %2 %3.", QStringLiteral("%1, %3: %2."));
        m_words.add("%1 %2 used up", QStringLiteral("%2: %1, zużyte"));
        m_words.add("this evening", QStringLiteral("dziś wieczorem"));
        const Sentence gone{say("%1 %2 used up"), {inWords(4), std::string("used up")}};
        const Sentence whole{
            say("%1 noted %2 %3."),
            {std::string("this evening"), gone, Sentence{say("this evening"), {}}}};
        // What somebody is called is no key, whatever it is.
        QCOMPARE(translated(whole),
                 QStringLiteral("this evening, dziś wieczorem: used up: 4, zużyte."));
        QCOMPARE(fill(whole), std::string("this evening noted four used up used up this evening."));
    }

    void theFormGoesByTheFirstNumber()
    {
        m_words.add("%1 small pieces", 2, QStringLiteral("%1 małe kawałki"));
        m_words.add("%1 small pieces", 5, QStringLiteral("%1 małych kawałków"));
        const auto pieces = [](int number) {
            return translated({sayCounted("%1 small pieces"), {inWords(number)}});
        };
        QCOMPARE(pieces(2), QStringLiteral("2 małe kawałki"));
        QCOMPARE(pieces(5), QStringLiteral("5 małych kawałków"));
        QVERIFY(!Sentence({say("%1 small pieces"), {inWords(5)}}).plural());
        const Sentence named{sayCounted("%1: none in the last %2 weeks."),
                             {std::string("3"), inDigits(8)}};
        QCOMPARE(named.plural().value(), 8);
    }

    /// The letters are those of the Unicode Character Database: U+0142 and U+0141.
    void aCapitalIsOneOfAnyAlphabet()
    {
        m_words.add("%1 is back", QStringLiteral("%1: wróciły"));
        QCOMPARE(translated({say("%1 is back"), {withCapital(std::string("łódki"))}}),
                 QStringLiteral("Łódki: wróciły"));
        QCOMPARE(translated({say("%1 is back"), {withSmall(std::string("Łódki"))}}),
                 QStringLiteral("łódki: wróciły"));
        QCOMPARE(capitalised(QString()), QString());
    }

    /// CLDR, as Qt's own locale of Urdu in India writes numbers, is the other reading.
    void urduHasItsOwnDigits()
    {
        setSpokenLanguage(urdu);
        const QLocale other(QLocale::Urdu, QLocale::India);
        for (int number = 0; number <= 120; ++number)
            QCOMPARE(numerals(number), other.toString(number));
        QCOMPARE(numerals(QStringLiteral("18:05")), QStringLiteral("۱۸:۰۵"));
        setSpokenLanguage(polish);
        QCOMPARE(numerals(2027), QStringLiteral("2027"));
    }

    void aCodeKeepsItsDigits()
    {
        setSpokenLanguage(urdu);
        QCOMPARE(numerals(QStringLiteral("R2")), QStringLiteral("R2"));
        QCOMPARE(numerals(QStringLiteral("2x, R12, 3")), QStringLiteral("2x, R12, ۳"));
    }

    void aNameIsSetApartWhereLinesAreReadFromTheRight()
    {
        setSpokenLanguage(urdu);
        m_words.add("%1 counted %2", QStringLiteral("%1 نے %2 گنے"));
        QCOMPARE(translated({say("%1 counted %2"), {std::string("Ruth 6 -> 5"), inWords(4)}}),
                 fsi + QStringLiteral("Ruth 6 -> 5") + pdi + QStringLiteral(" نے ۴ گنے"));
        QCOMPARE(translated({say("%1 counted %2"), {withCapital(std::string("ruth")), inWords(4)}}),
                 fsi + QStringLiteral("Ruth") + pdi + QStringLiteral(" نے ۴ گنے"));
        setSpokenLanguage(polish);
        QCOMPARE(isolated(QStringLiteral("Ruth")), QStringLiteral("Ruth"));
    }

    void whatGuardsSomebodyKeepsItsEnglishUntilItIsReviewed()
    {
        m_words.add("Look now.", QStringLiteral("Szukaj teraz."));
        m_words.add("Keep %1 away.", QStringLiteral("Niech %1 nie podchodzi."));
        const std::vector<Sentence> both{{say("Look now."), {}},
                                         {say("Keep %1 away."), {std::string("Mirren")}}};
        QCOMPARE(safetyText(both), QStringLiteral("Szukaj teraz. Niech Mirren nie podchodzi."));
        setSpokenLanguage({QStringLiteral("pl"), false, false});
        QCOMPARE(safetyText(both), QStringLiteral("Szukaj teraz. Niech Mirren nie podchodzi.\n"
                                                  "Look now. Keep Mirren away."));
        setSpokenLanguage(urdu);
        QVERIFY(safetyText(both.front()).endsWith(u'\n' + lri + QStringLiteral("Look now.") + pdi));
        QCOMPARE(safetyText(Sentence{}), QString());
    }

    void aScreensOwnWordsDoTheSame()
    {
        m_words.add("Does %1 bite?", QStringLiteral("Czy %1 gryzie?"));
        const QString key = QStringLiteral("Does %1 bite?");
        const QString name = QStringLiteral("Tam");
        QCOMPARE(SafetyWords::about(key, name), QStringLiteral("Czy Tam gryzie?"));
        setSpokenLanguage({QStringLiteral("pl"), false, false});
        QCOMPARE(SafetyWords::about(key, name), QStringLiteral("Czy Tam gryzie?\nDoes Tam bite?"));
        setSpokenLanguage({});
        QCOMPARE(SafetyWords::of(QStringLiteral("Look")), QStringLiteral("Look"));
    }

    /// safety.md 2: "show exactly, keep the capitals".
    void prescribedWordsAlwaysKeepTheirEnglish()
    {
        m_words.add("WARNING: CHOKING HAZARD", QStringLiteral("OSTRZEŻENIE"));
        QCOMPARE(withEnglish({say("WARNING: CHOKING HAZARD"), {}}),
                 QStringLiteral("OSTRZEŻENIE\nWARNING: CHOKING HAZARD"));
    }
};

QTEST_GUILESS_MAIN(TestSpokenSentences)
#include "tst_spoken_sentences.moc"
