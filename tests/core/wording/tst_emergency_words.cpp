#include <QtTest>

#include "core/wording/emergency_words.h"

#include <algorithm>
#include <cctype>

using namespace lidlark::wording;

namespace {

std::string wordsOf(Trouble trouble)
{
    std::string words;
    for (const Sentence &sentence : troubleWords(trouble))
        words += fill(sentence) + ' ';
    return words;
}

bool says(Trouble trouble, const char *words)
{
    return wordsOf(trouble).find(words) != std::string::npos;
}

} // namespace

/// Guards the words of safety.md 1, rows EM-01 to EM-05, CN-02, BB-01 and MG-01.
class TestEmergencyWords : public QObject
{
    Q_OBJECT

private slots:
    void theFirstLineIsTheSameForAll()
    {
        QCOMPARE(fill(emergencyFirstLine("")), std::string("Call your local emergency number."));
        QCOMPARE(fill(emergencyFirstLine("112")),
                 std::string("Call your local emergency number: 112."));
    }

    /// EM-05: never hard-code one country's number.
    void noCountrysNumberIsBuiltIn()
    {
        for (std::size_t i = 0; i < troubleNames.names.size(); ++i) {
            const std::string words = wordsOf(static_cast<Trouble>(i));
            int run = 0;
            for (const char letter : words) {
                run = std::isdigit(static_cast<unsigned char>(letter)) != 0 ? run + 1 : 0;
                QVERIFY2(run < 3, words.c_str());
            }
        }
    }

    /// EM-01: keep coughing, do not leave, do not poke, what is an emergency, learn first aid.
    void theAirwayIsThatOfTheRow()
    {
        QVERIFY(says(Trouble::Airway, "Let them go on coughing, and stay with them."));
        QVERIFY(says(Trouble::Airway, "Do not feel about in the mouth."));
        QVERIFY(says(Trouble::Airway, "Cannot cough, cry, speak or breathe"));
        QVERIFY(says(Trouble::Airway, "trained instructor"));
    }

    /// EM-01: "No manoeuvre instructions in the app".
    void noManoeuvreIsDescribed()
    {
        for (std::size_t i = 0; i < troubleNames.names.size(); ++i) {
            std::string words = wordsOf(static_cast<Trouble>(i));
            std::transform(words.begin(), words.end(), words.begin(),
                           [](unsigned char c) { return std::tolower(c); });
            for (const char *act : {"back blow", "slap", "thrust", "compress", "press on",
                                    "squeeze", "upside", "finger sweep", "make them sick", "vomit"})
                QVERIFY2(words.find(act) == std::string::npos, act);
        }
    }

    /// EM-02, BB-01, MG-01, CN-02.
    void swallowedIsCalledForAtOnce()
    {
        QVERIFY(says(Trouble::Swallowed, "now, even if your child seems well"));
        QVERIFY(says(Trouble::Swallowed, "magnet or a button battery: go to hospital"));
        QVERIFY(says(Trouble::Swallowed, "A coin may be a button battery: treat it as one."));
        for (const char *thing : {"battery", "small thing you do not know", "foam", "salty dough"})
            QVERIFY2(says(Trouble::Swallowed, thing), thing);
    }

    /// EM-03 and the emergency line of job.md scenario 3.
    void troubleBreathingIsTheEmergencyNumber()
    {
        QVERIFY(says(Trouble::Breathing,
                     "Trouble breathing, swelling, fainting: emergency number now."));
        QVERIFY(says(Trouble::Breathing, "rash"));
    }

    /// EM-04: lukewarm water, poison line.
    void anEyeIsRinsed()
    {
        QVERIFY(says(Trouble::Eye, "gently with lukewarm water, at least 15 minutes"));
        QVERIFY(says(Trouble::Eye, "poison line"));
    }
};

QTEST_APPLESS_MAIN(TestEmergencyWords)
#include "tst_emergency_words.moc"
