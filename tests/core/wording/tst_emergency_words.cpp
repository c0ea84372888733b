#include <QTest>

#include <QRegularExpression>

#include "core/wording/emergency_words.h"

using namespace lidlark::wording;

/// What safety.md EM-01 to EM-05 and CN-02 ask to be said, and what must not be said: no
/// manoeuvres, no country's number.
class TestEmergencyWords : public QObject
{
    Q_OBJECT

private:
    static QString said(Emergency emergency, const std::string &poisonLine = {})
    {
        QString text;
        for (const Sentence &line : emergencyLines(emergency, poisonLine))
            text += QString::fromStdString(fill(line)) + "\n";
        return text;
    }

    static QString everything()
    {
        QString text = QString::fromStdString(fill(emergencyLead({})));
        for (const Emergency emergency :
             {Emergency::Airway, Emergency::Swallowed, Emergency::Reaction, Emergency::Eye})
            text += said(emergency) + QString::fromStdString(fill(emergencyName(emergency)));
        return text;
    }

private slots:
    void theNumberComesFirst()
    {
        // EM-01: "first line on screen: 'Call your local emergency number.'"
        QCOMPARE(fill(emergencyLead({})), std::string("Call your local emergency number."));
        const QString airway = said(Emergency::Airway);
        QVERIFY(airway.contains("go on coughing"));
        QVERIFY(airway.contains("stay with them"));
        QVERIFY(airway.contains("Do not feel about in the mouth"));
        QVERIFY(airway.contains("Cannot cough, cry, speak or breathe"));
        QVERIFY(airway.contains("trained teacher"));
    }

    void whatWasSwallowedIsNeverWaitedFor()
    {
        // EM-02: "even if the child seems well"; "go to hospital without waiting". CN-02: "may be a
        // coin cell instead: treat as BB-01".
        const QString words = said(Emergency::Swallowed);
        QVERIFY(words.contains("even if your child seems well"));
        QVERIFY(words.contains("go to hospital, do not wait"));
        QVERIFY(words.contains("a coin that may be a battery"));
        QVERIFY(words.contains("salty dough"));
        QVERIFY(said(Emergency::Swallowed, "0 123").contains("The poison line is 0 123."));
    }

    void breathAndSwellingAreAnEmergency()
    {
        // EM-03, and job.md scenario 3: the emergency line is generic.
        QVERIFY(said(Emergency::Reaction)
                    .contains("Trouble breathing, swelling, fainting: emergency number now."));
    }

    void anEyeIsRinsed()
    {
        // EM-04: "rinse gently with lukewarm water and call the poison line".
        QVERIFY(said(Emergency::Eye).contains("Rinse gently with lukewarm water"));
        QVERIFY(said(Emergency::Eye, "0 123").contains("0 123"));
    }

    void noCountrysNumberIsBuiltIn()
    {
        // EM-05. 15 is a number of minutes.
        QVERIFY(!everything().remove("15 minutes").contains(QRegularExpression("[0-9]")));
        QCOMPARE(fill(emergencyLead("0 999 1")), std::string("Call 0 999 1."));
    }

    void noManoeuvreIsTaught()
    {
        // EM-01: "No manoeuvre instructions in the app".
        const QRegularExpression manoeuvre("thrust|slap|blow|squeeze|press|turn (them|the child)",
                                           QRegularExpression::CaseInsensitiveOption);
        QVERIFY(!everything().contains(manoeuvre));
    }
};

QTEST_APPLESS_MAIN(TestEmergencyWords)
#include "tst_emergency_words.moc"
