#include <QtTest>

#include "core/box/question_look.h"
#include "core/wording/question_words.h"

using namespace lidlark;
using namespace lidlark::wording;
using box::ExceptionKind;
using box::Question;
using box::QuestionLook;
using box::QuestionSort;
using box::Side;

namespace {

constexpr Day monday{20'829}; // 11 January 2027
constexpr DayPart mondayEvening{monday, PartOfDay::Evening};
constexpr DayPart mondayAfternoon{monday, PartOfDay::Afternoon};
constexpr DayPart tuesdayMorning{Day{20'830}, PartOfDay::Morning};

const PieceNames eyes{"stick-on eye", "stick-on eyes"};

Side side(const char *author, int pieces, DayPart when = mondayEvening)
{
    Side side;
    side.identity = std::string("event of ") + author;
    side.author = author;
    side.device = {std::string("phone of ") + author};
    side.when = when;
    side.pieces = pieces;
    return side;
}

Side gone(const char *author, ExceptionKind kind, int pieces, DayPart when = mondayEvening)
{
    Side of = side(author, pieces, when);
    of.exceptions.set(kind, pieces);
    return of;
}

Side counted(const char *author, int pieces, DayPart when = mondayEvening)
{
    Side of = side(author, pieces, when);
    of.isCount = true;
    return of;
}

Question ask(QuestionSort sort, std::vector<Side> sides)
{
    Question question;
    question.sort = sort;
    question.sides = std::move(sides);
    question.askedOf = question.sides.back().author;
    question.askedOn = question.sides.back().device;
    question.asked = mondayEvening;
    return question;
}

std::string said(const Question &question, DayPart now = mondayEvening)
{
    std::string text;
    for (const Sentence &sentence : questionWords(question, eyes, now))
        text += (text.empty() ? "" : " ") + fill(sentence);
    return text;
}

std::vector<std::string> choices(const Question &question)
{
    std::vector<std::string> words;
    for (const AnswerChoice &choice : answerChoices(question))
        words.push_back(fill(choice.words));
    std::sort(words.begin(), words.end());
    return words;
}

std::string answered(Question question, const char *answer)
{
    question.answer = answer;
    question.answeredBy = "Ruth";
    question.answeredWhen = mondayEvening;
    return fill(answerSaid(question));
}

using Words = std::vector<std::string>;

} // namespace

/// Guards the words of questions that two phones leave open (job.md scenario 1; events.md 6, 7):
/// plain, in the order it happened, and never who was wrong.
class TestQuestionWords : public QObject
{
    Q_OBJECT

private slots:
    void eachSortIsAskedInPlainWords_data()
    {
        QTest::addColumn<QString>("asked");
        QTest::addColumn<QString>("words");
        const auto row = [](const char *name, const Question &question, const char *words,
                            DayPart now = mondayEvening) {
            QTest::newRow(name) << QString::fromStdString(said(question, now))
                                << QString::fromUtf8(words);
        };
        row("scenario 1",
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 1), gone("Gran", ExceptionKind::UsedUp, 1)}),
            "Ruth and Gran each noted one stick-on eye used up this evening. Same one, or two?");
        row("the next day",
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 1), gone("Gran", ExceptionKind::UsedUp, 1)}),
            "Ruth and Gran each noted one stick-on eye used up yesterday evening. Same one, or "
            "two?",
            tuesdayMorning);
        row("two each",
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 2), gone("Gran", ExceptionKind::UsedUp, 2)}),
            "Ruth and Gran each noted two stick-on eyes used up this evening. The same two, or "
            "four in all?");
        row("unequal",
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 1), gone("Gran", ExceptionKind::UsedUp, 2)}),
            "Ruth noted one stick-on eye used up this evening. Gran noted two stick-on eyes used "
            "up this evening. The same ones, or three in all?");
        row("at two times",
            ask(QuestionSort::SameOrTwo, {gone("Ruth", ExceptionKind::UsedUp, 1, mondayAfternoon),
                                          gone("Gran", ExceptionKind::UsedUp, 1)}),
            "Ruth noted one stick-on eye used up this afternoon. Gran noted one stick-on eye used "
            "up this evening. Same one, or two?");
        row("one person, two phones",
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 1), gone("Ruth", ExceptionKind::UsedUp, 1)}),
            "Ruth noted one stick-on eye used up this evening, on two phones. Same one, or two?");
        row("three people",
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 1), gone("Gran", ExceptionKind::UsedUp, 1),
                 gone("Archie", ExceptionKind::UsedUp, 1)}),
            "Ruth noted one stick-on eye used up this evening. Gran noted one stick-on eye used up "
            "this evening. Archie noted one stick-on eye used up this evening. Same one, or "
            "three?");
        row("a change and a count",
            ask(QuestionSort::BeforeOrAfter,
                {gone("Gran", ExceptionKind::UsedUp, 1), counted("Ruth", 5)}),
            "Gran noted one stick-on eye used up this evening. Ruth counted 5 stick-on eyes this "
            "evening. Was that before the count, or after?");
        Question sorts = ask(QuestionSort::BeforeOrAfter, {side("Gran", 2), counted("Ruth", 5)});
        sorts.sides[0].exceptions.set(ExceptionKind::Lost, 1);
        sorts.sides[0].exceptions.set(ExceptionKind::UsedUp, 1);
        row("a change of two sorts", sorts,
            "Gran noted two stick-on eyes gone this evening. Ruth counted 5 stick-on eyes this "
            "evening. Was that before the count, or after?");
        Question found = ask(QuestionSort::BeforeOrAfter, {side("Gran", 1), counted("Ruth", 1)});
        found.sides[0].brings = true;
        row("a find and a count", found,
            "Gran put one stick-on eye in this evening. Ruth counted 1 stick-on eye this evening. "
            "Was that before the count, or after?");
        row("two counts",
            ask(QuestionSort::WhoCountedLast, {counted("Ruth", 5), counted("Gran", 4)}),
            "Ruth counted 5 stick-on eyes. Gran counted 4 stick-on eyes. Which count was the "
            "last?");
        row("two numbers that came",
            ask(QuestionSort::WhichCountedIn, {side("Ruth", 6), side("Gran", 5)}),
            "Ruth counted in 6 stick-on eyes. Gran counted in 5 stick-on eyes. How many came?");
        row("two notes of one play",
            ask(QuestionSort::WhichPutBack,
                {gone("Ruth", ExceptionKind::UsedUp, 1), side("Gran", 0)}),
            "Two notes of one play, about stick-on eyes. Ruth: one used up. Gran: all back. Which "
            "is right?");
    }
    void eachSortIsAskedInPlainWords()
    {
        QFETCH(QString, asked);
        QTEST(asked, "words");
        QVERIFY(!asked.contains(u'!'));
        QVERIFY(!asked.contains(QStringLiteral("please"), Qt::CaseInsensitive));
    }

    void everyAnswerSaysWhatItMeans()
    {
        const Question same =
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 1), gone("Gran", ExceptionKind::UsedUp, 1)});
        QCOMPARE(choices(same), (Words{"The same one", "Two"}));
        const Question twice =
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 2), gone("Gran", ExceptionKind::UsedUp, 2)});
        QCOMPARE(choices(twice), (Words{"Four in all", "The same two"}));
        const Question order = ask(QuestionSort::BeforeOrAfter,
                                   {gone("Gran", ExceptionKind::UsedUp, 1), counted("Ruth", 5)});
        QCOMPARE(choices(order), (Words{"After the count", "Before the count"}));
        const Question counts =
            ask(QuestionSort::WhoCountedLast, {counted("Ruth", 5), counted("Gran", 4)});
        QCOMPARE(choices(counts), (Words{"Gran counted 4", "Ruth counted 5"}));
        const Question notes = ask(QuestionSort::WhichPutBack,
                                   {gone("Ruth", ExceptionKind::UsedUp, 1), side("Gran", 0)});
        QCOMPARE(choices(notes), (Words{"Gran: all back", "Ruth: one used up"}));
        const Question came = ask(QuestionSort::WhichCountedIn, {side("Ruth", 6), side("Gran", 5)});
        QCOMPARE(choices(came), (Words{"5, says Gran", "6, says Ruth"}));
    }

    void theAnswerNamesWhoGaveIt()
    {
        const Question same =
            ask(QuestionSort::SameOrTwo,
                {gone("Ruth", ExceptionKind::UsedUp, 1), gone("Gran", ExceptionKind::UsedUp, 1)});
        QCOMPARE(answered(same, "two"), std::string("Ruth says: two."));
        QCOMPARE(answered(same, "same"), std::string("Ruth says: the same one."));
        const Question counts =
            ask(QuestionSort::WhoCountedLast, {counted("Ruth", 5), counted("Gran", 4)});
        QCOMPARE(answered(counts, "event of Gran"), std::string("Ruth says: 4."));
        const Question notes = ask(QuestionSort::WhichPutBack,
                                   {gone("Ruth", ExceptionKind::UsedUp, 1), side("Gran", 0)});
        QCOMPARE(answered(notes, "event of Gran"), std::string("Ruth says: all back."));
        QCOMPARE(answered(notes, "event of Ruth"), std::string("Ruth says: one used up."));
    }

    /// job.md scenario 1, trap: asking both adults. From the next day on anybody may answer.
    void oneAdultIsAsked()
    {
        Question question = ask(QuestionSort::SameOrTwo, {gone("Ruth", ExceptionKind::UsedUp, 1),
                                                          gone("Gran", ExceptionKind::UsedUp, 1)});
        const DeviceId ruths{"phone of Ruth"};
        const DeviceId grans{"phone of Gran"};
        QCOMPARE(lookOf(question, "Gran", grans, monday), QuestionLook::Asks);
        QCOMPARE(lookOf(question, "Ruth", ruths, monday), QuestionLook::Waits);
        QCOMPARE(fill(whoIsAsked(question)), std::string("Gran is asked."));
        QCOMPARE(lookOf(question, "Ruth", ruths, monday + 1), QuestionLook::Asks);
        question.answer = "two";
        question.answeredBy = "Gran";
        question.answeredWhen = mondayEvening;
        QCOMPARE(lookOf(question, "Ruth", ruths, monday), QuestionLook::Said);
        QCOMPARE(lookOf(question, "Ruth", ruths, monday + 1), QuestionLook::Said);
        QCOMPARE(lookOf(question, "Ruth", ruths, monday + 2), QuestionLook::Gone);
    }
};

QTEST_APPLESS_MAIN(TestQuestionWords)
#include "tst_question_words.moc"
