#include <QtTest>

#include "core/wording/detail_words.h"
#include "core/wording/error_words.h"
#include "core/wording/reason_words.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::wording;
using catalogue::Tag;
using safety::Reason;
using safety::ReasonCode;

namespace {

QString said(const Sentence &sentence)
{
    return QString::fromStdString(fill(sentence));
}

/// The largest placeholder is the number of arguments, and none below it is left out.
bool fits(const Sentence &sentence)
{
    for (std::size_t number = 1; number <= 9; ++number) {
        const bool wanted =
            sentence.english.text().find('%' + std::to_string(number)) != std::string_view::npos;
        if (wanted != (number <= sentence.arguments.size()))
            return false;
    }
    return true;
}

catalogue::Catalogue twoItems()
{
    catalogue::ItemKind ball;
    ball.id = {"ball"};
    ball.name = "slit ball";
    catalogue::ItemKind straw;
    straw.id = {"straw"};
    straw.name = "straws";
    return {{ball, straw}, {}, {}};
}

QString saidOf(const Reason &reason)
{
    return said(sentenceFor(reason, twoItems()));
}

} // namespace

/// Guards the sentences that say why something is held back or went wrong: they fit one person and
/// several, one thing and many, and every way in which a fact can be missing.
class TestReasonWords : public QObject
{
    Q_OBJECT

private slots:
    void placeholdersMatchArgumentsHoweverLittleIsKnown()
    {
        for (int code = 0; code <= static_cast<int>(ReasonCode::WaterUnderThree); ++code) {
            for (const char *name : {"", "Mirren", "Mirren, Tam", "Mirren, Tam, Jo"}) {
                for (const int number : {0, 1, 6, 18, 24, 30, 42}) {
                    Reason reason{static_cast<ReasonCode>(code)};
                    reason.name = name;
                    reason.number = number;
                    QVERIFY2(fits(sentenceFor(reason, twoItems())), qPrintable(saidOf(reason)));
                    reason.tag = Tag::Balloon;
                    reason.item = ItemId{"ball"};
                    QVERIFY2(fits(sentenceFor(reason, twoItems())), qPrintable(saidOf(reason)));
                }
            }
        }
    }

    void severalPeopleAreMany()
    {
        Reason reason{ReasonCode::UnderThreeInRoom, Tag::Small};
        reason.name = "Mirren";
        QCOMPARE(saidOf(reason),
                 QStringLiteral("Mirren is under three and is here: no small parts."));
        reason.name = "Mirren, Tam, Jo";
        QCOMPARE(
            saidOf(reason),
            QStringLiteral("Mirren, Tam and Jo are under three and are here: no small parts."));
    }

    /// activities.md 1.4, BALLOON: a mouther of any age counts, so the sentence must not say that
    /// the person is small.
    void whoKeepsBalloonsOutNeedNotBeSmall()
    {
        Reason reason{ReasonCode::SmallChildInHome, Tag::Balloon};
        reason.name = "Oona";
        QVERIFY(!saidOf(reason).contains(QStringLiteral("small")));
        QVERIFY(saidOf(reason).contains(QStringLiteral("Oona")));
    }

    void oneThingAndManyReadAlike()
    {
        QCOMPARE(saidOf({.code = ReasonCode::LatexInHome, .item = ItemId{"ball"}}),
                 QStringLiteral("Somebody at home must avoid latex. Out of the house: slit ball."));
        QCOMPARE(saidOf({.code = ReasonCode::ItemPastDate, .item = ItemId{"straw"}}),
                 QStringLiteral("Too old, or dried out: straws."));
        QCOMPARE(saidOf({.code = ReasonCode::ItemUsedUp, .item = ItemId{"straw"}, .number = 2}),
                 QStringLiteral("It needs two, and fewer are left: straws."));
        QCOMPARE(saidOf({.code = ReasonCode::LatexInHome}),
                 QStringLiteral("Somebody at home must avoid latex, and this uses it."));
    }

    void agesAreSaidInYearsFromTwoOn()
    {
        const auto floor = [](int months) {
            return saidOf({.code = ReasonCode::BelowFloor, .number = months});
        };
        QCOMPARE(floor(18), QStringLiteral("Offered from 18 months."));
        QCOMPARE(floor(24), QStringLiteral("Offered from two years."));
        QCOMPARE(floor(30), QStringLiteral("Offered from two and a half years."));
        QCOMPARE(floor(32), QStringLiteral("Offered from 32 months."));
        QCOMPARE(saidOf({.code = ReasonCode::BelowTagFloor, .tag = Tag::Sticker, .number = 30}),
                 QStringLiteral("Not before two and a half years, because of stickers."));
    }

    void anUnknownSupervisionIsTheClosest()
    {
        QCOMPARE(saidOf({.code = ReasonCode::NeedsCloserAdult}),
                 QStringLiteral("Needs someone right beside."));
        QCOMPARE(saidOf({.code = ReasonCode::NeedsCloserAdult,
                         .supervision = catalogue::Supervision::Reach}),
                 QStringLiteral("Needs someone within arm's reach."));
    }

    void everyErrorSaysThatNothingIsLost()
    {
        for (int code = 0; code <= static_cast<int>(ErrorCode::AlreadyAnswered); ++code) {
            for (const char *detail : {"", "home.lidlark", "1970-01-01"}) {
                const Sentence sentence = sentenceFor(Error{static_cast<ErrorCode>(code), detail});
                const QString text = said(sentence);
                QVERIFY2(fits(sentence), qPrintable(text));
                QVERIFY2(text.contains(QStringLiteral("Nothing was ")) ||
                             text.contains(QStringLiteral("Nothing that was kept")) ||
                             text.contains(QStringLiteral("left as it is")) ||
                             text.contains(QStringLiteral("left as it was")),
                         qPrintable(text));
                QVERIFY2(!text.contains(QStringLiteral("  ")) &&
                             !text.contains(QStringLiteral(" .")),
                         qPrintable(text));
            }
        }
    }

    /// The details that the use cases really give begin with or without an article.
    void whatCannotBeFoundReadsWhateverItIs()
    {
        for (const char *detail : {"this play", "a box for Fin", "eyes in this box"}) {
            const QString text = said(sentenceFor(Error{ErrorCode::NotFound, detail}));
            QVERIFY2(text.startsWith(QStringLiteral("Lidlark cannot find ") +
                                     QString::fromUtf8(detail) + u'.'),
                     qPrintable(text));
        }
    }

    /// Words that the core itself wrote are words to translate; what they speak of is not.
    void whatAnErrorSpeaksOfCanBeTranslated()
    {
        const auto words = [](const char *detail) {
            const Argument argument = detailWords(detail);
            const auto *sentence = std::get_if<Sentence>(&argument.content);
            return sentence != nullptr ? *sentence : Sentence{};
        };
        QVERIFY(words("this play") == (Sentence{say("this play"), {}}));
        QVERIFY(words("pegs: more than the box held") ==
                (Sentence{say("%1: more than the box held"), {std::string("pegs")}}));
        QVERIFY(words("any pegs in this box") ==
                (Sentence{say("any %1 in this box"), {std::string("pegs")}}));
        QVERIFY(words("pegs in this box") ==
                (Sentence{say("%1 in this box"), {std::string("pegs")}}));
        QVERIFY(words("/home/gran/home.lidlark") == Sentence{});
        QVERIFY(words(": empty") == Sentence{});
    }

    /// An id is a word for whoever types commands, not for whoever reads a page.
    void aThingIsCalledByItsName()
    {
        const catalogue::Catalogue &names = test::realCatalogue();
        const Argument argument = detailWords("K2: eyes: say why it differs", &names);
        QVERIFY(std::get<Sentence>(argument.content) ==
                (Sentence{say("%1: say why it differs"), {std::string("K2: stick-on eyes")}}));
        QVERIFY(said(sentenceFor(Error{ErrorCode::Invalid,
                                       "K1: eyes, dough to be cleaned or replaced first"},
                                 &names))
                    .contains(QStringLiteral("K1: stick-on eyes, dough to be cleaned")));
        const QString play =
            said(sentenceFor(Error{ErrorCode::NotFound, "the activity slow-oars"}, &names));
        QVERIFY2(play.contains(QStringLiteral("Slow Oars")), qPrintable(play));
        QVERIFY(said(sentenceFor(Error{ErrorCode::NotFound, "the activity none"}, &names))
                    .contains(QStringLiteral("the activity none")));
    }
};

QTEST_APPLESS_MAIN(TestReasonWords)
#include "tst_reason_words.moc"
