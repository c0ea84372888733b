#include <QtTest>

#include "core/wording/kite_words.h"
#include "core/wording/play_words.h"

#include <QRegularExpression>

using namespace lidlark;
using namespace lidlark::wording;

/// Guards what the kite says to a child and to the adult (checkin.md 3.1, 5).
class TestKiteWords : public QObject
{
    Q_OBJECT

private:
    static QString said(const Sentence &sentence) { return QString::fromStdString(fill(sentence)); }
    static qsizetype wordsIn(const QString &line)
    {
        return line.split(u' ', Qt::SkipEmptyParts).size();
    }

    static QStringList childsLines()
    {
        QStringList lines{said(kiteQuestion()), said(kiteQuestionNow()), said(handLine()),
                          said(everyKite()), said(kiteThanks())};
        for (int i = 0; i < 5; ++i)
            lines.append(said(kiteLine(static_cast<checkin::Kite>(i))));
        return lines;
    }

private slots:
    /// checkin.md 3.1: at most eight words.
    void aChildHearsAtMostEightWords()
    {
        for (const QString &line : childsLines())
            QVERIFY2(wordsIn(line) <= 8, qPrintable(line));
    }

    /// checkin.md 3.1: same length for every state.
    void noStateIsSaidAtGreaterLength()
    {
        for (int i = 0; i < 5; ++i) {
            const qsizetype words = wordsIn(said(kiteLine(static_cast<checkin::Kite>(i))));
            QVERIFY(words >= 5 && words <= 7);
        }
    }

    /// checkin.md 3.1: never "How are you feeling?", never a good kite.
    void nothingAsksForAFeelingOrAGoodOne()
    {
        const QRegularExpression never(QStringLiteral("feel|good|well done|better|calm|please|!"),
                                       QRegularExpression::CaseInsensitiveOption);
        QCOMPARE(childsLines().filter(never), QStringList());
    }

    /// checkin.md 5: at most 25 words a card, and the words it avoids.
    void theAdultsCardsAreShortAndScoldNobody()
    {
        const QRegularExpression avoided(
            QStringLiteral("calm down|be good|use your tools|\\bwhy\\b"),
            QRegularExpression::CaseInsensitiveOption);
        QStringList heads;
        for (const TogetherCard &card : togetherCards()) {
            heads.append(said(card.head));
            QVERIFY2(wordsIn(said(card.line)) <= 25, qPrintable(said(card.line)));
            QVERIFY(!said(card.line).contains(avoided));
        }
        QCOMPARE(heads, (QStringList{QStringLiteral("Me"), QStringLiteral("The room"),
                                     QStringLiteral("Us"), QStringLiteral("A small skill"),
                                     QStringLiteral("If it grows")}));
    }
};

QTEST_MAIN(TestKiteWords)
#include "tst_kite_words.moc"
