#include <QTest>

#include "core/base/digest.h"
#include "core/sync/join_check.h"
#include "core/sync/join_words.h"
#include "core/sync/typed_code.h"

#include <nlohmann/json.hpp>
#include <rapidcheck.h>

#include <fstream>
#include <set>

using namespace lidlark;
using namespace lidlark::sync;

namespace {

using Kind = WordProblem::Kind;

JoinSecret secretFromHex(const std::string &hex)
{
    const QByteArray bytes = QByteArray::fromHex(QByteArray::fromStdString(hex));
    std::array<std::uint8_t, JoinSecret::size> array{};
    if (bytes.size() != static_cast<qsizetype>(array.size()))
        qFatal("%s is no secret", hex.c_str());
    std::copy(bytes.begin(), bytes.end(), array.begin());
    return JoinSecret(array);
}

JoinSecret aSecret()
{
    return secretFromHex("00112233445566778899");
}

std::vector<std::string> shown(const JoinSecret &secret)
{
    const auto words = wordsOf(secret);
    return {words.begin(), words.end()};
}

std::string joined(const std::vector<std::string> &words, const std::string &between = " ")
{
    std::string text;
    for (const std::string &word : words)
        text += (text.empty() ? "" : between) + word;
    return text;
}

bool reads(const std::string &typed, const JoinSecret &secret)
{
    const auto answer = secretFromWords(typed);
    const auto *read = std::get_if<JoinSecret>(&answer);
    return read != nullptr && read->equals(secret);
}

std::optional<WordProblem> problemOf(std::string_view typed)
{
    const auto answer = secretFromWords(typed);
    const auto *problem = std::get_if<WordProblem>(&answer);
    return problem != nullptr ? std::optional(*problem) : std::nullopt;
}

/// Gives the same bytes again and again.
class FixedEntropy final : public Entropy
{
public:
    std::array<std::uint8_t, 16> sixteenBytes() override { return bytes; }
    std::array<std::uint8_t, 16> bytes{};
};

} // namespace

/// Guards that a joining code carries 80 bits, comes back whole however it is typed, and that a
/// slip is named before anything is tried (design.md 9, events.md 10).
class TestJoinCode : public QObject
{
    Q_OBJECT

private slots:
    void whatIsShownIsRead()
    {
        QVERIFY(rc::check("every secret comes back from its words", [] {
            const auto numbers = *rc::gen::container<std::array<std::uint8_t, JoinSecret::size>>(
                rc::gen::arbitrary<std::uint8_t>());
            const JoinSecret secret(numbers);
            RC_ASSERT(secretOf(numbersOf(secret)).equals(secret));
            RC_ASSERT(reads(joined(shown(secret)), secret));
        }));
    }

    /// 80 bits exactly: each of them changes the secret's words, and 2^80 = 1024^8, so no word of
    /// the eight has a bit that says nothing.
    void everyBitOfChanceCounts()
    {
        static_assert(JoinSecret::size * 8 == 80);
        FixedEntropy entropy;
        std::set<std::vector<std::string>> codes{shown(freshJoinSecret(entropy))};
        for (int bit = 0; bit < 80; ++bit) {
            entropy.bytes = {};
            entropy.bytes[static_cast<std::size_t>(bit / 8)] =
                static_cast<std::uint8_t>(1 << (bit % 8));
            codes.insert(shown(freshJoinSecret(entropy)));
        }
        QCOMPARE(codes.size(), std::size_t{81});
        std::set<JoinNumbers> numbers;
        for (std::uint16_t word = 0; word < joinWordCount; ++word) {
            for (std::size_t place = 0; place < 8; ++place) {
                JoinNumbers code{};
                code[place] = word;
                QCOMPARE(numbersOf(secretOf(code)), code);
                numbers.insert(code);
            }
        }
        QCOMPARE(numbers.size(), 8 * (joinWordCount - 1) + 1);
    }

    void twoCodesAreNotTheSame()
    {
        QVERIFY(startRandomness());
        SystemEntropy entropy;
        QVERIFY(!freshJoinSecret(entropy).equals(freshJoinSecret(entropy)));
    }

    void itIsReadHoweverItIsTyped_data()
    {
        QTest::addColumn<QString>("typed");
        const std::vector<std::string> words = shown(aSecret());
        const auto row = [](const char *name, const std::string &text) {
            QTest::newRow(name) << QString::fromStdString(text);
        };
        row("as shown", joined(words));
        row("hyphens", joined(words, "-"));
        row("commas", joined(words, ", "));
        row("a phone's own dash", joined(words, "\u2014"));
        row("a phone's own space", joined(words, "\u00a0"));
        row("lines", joined(words, "\r\n") + "\n");
        row("much room", "  \t" + joined(words, "    ") + "   ");
        row("capitals", QString::fromStdString(joined(words)).toUpper().toStdString());
        std::string numbered;
        std::vector<std::string> starts;
        for (std::size_t i = 0; i < words.size(); ++i) {
            numbered += std::to_string(i + 1) + ". " + words[i] + "\n";
            starts.push_back(words[i].substr(0, 4));
        }
        row("numbered", numbered);
        row("the first four letters", joined(starts));
        row("a full stop", joined(words) + ".");
    }
    void itIsReadHoweverItIsTyped()
    {
        QFETCH(QString, typed);
        QVERIFY(reads(typed.toStdString(), aSecret()));
    }

    /// Every wrong word at every place, each known: 9 x 1023 codes.
    void oneWrongWordIsAlwaysNoticed()
    {
        const std::vector<std::string> words = shown(aSecret());
        int noticed = 0;
        for (std::size_t place = 0; place < words.size(); ++place) {
            for (const std::string_view other : joinWords()) {
                std::vector<std::string> typed = words;
                typed[place] = other;
                const auto problem = problemOf(joined(typed));
                QCOMPARE(problem.has_value(), other != words[place]);
                noticed += problem && problem->kind == Kind::Another ? 1 : 0;
            }
        }
        QCOMPARE(noticed, 9 * 1023);
    }

    void twoWordsExchangedAreAlwaysNoticed()
    {
        QVERIFY(rc::check("two places exchanged", [] {
            const JoinSecret secret(*rc::gen::container<std::array<std::uint8_t, 10>>(
                rc::gen::arbitrary<std::uint8_t>()));
            std::vector<std::string> words = shown(secret);
            const auto one = *rc::gen::inRange<std::size_t>(0, words.size());
            const auto other = *rc::gen::inRange<std::size_t>(0, words.size());
            RC_PRE(words[one] != words[other]);
            std::swap(words[one], words[other]);
            RC_ASSERT(problemOf(joined(words))->kind == Kind::Another);
        }));
    }

    /// Of codes that are wrong in any way, one in 1024 passes: the powers of x do run through all
    /// 1023 numbers, so each check word has equally many codes.
    void everyCheckIsAsLikely()
    {
        std::set<std::uint16_t> checks;
        std::uint16_t power = 1;
        for (int i = 0; i < 1023; ++i) {
            power = joinCheck(std::array{power});
            checks.insert(power);
        }
        QCOMPARE(power, std::uint16_t{1});
        QCOMPARE(checks.size(), std::size_t{1023});
        QVERIFY(!checks.contains(0));
    }

    void anUnknownWordIsNamed()
    {
        std::vector<std::string> typed = shown(aSecret());
        typed[3] = "kettel";
        typed[7] = "qqqqqqqq";
        const auto problem = problemOf(joined(typed));
        QVERIFY(problem);
        QCOMPARE(problem->kind, Kind::Unknown);
        QCOMPARE(problem->words, std::size_t{9});
        QCOMPARE(problem->unknown.size(), std::size_t{2});
        QCOMPARE(problem->unknown[0].place, std::size_t{4});
        QCOMPARE(problem->unknown[0].typed, std::string("kettel"));
        QCOMPARE(problem->unknown[0].nearest.front(), std::string_view("kettle"));
        QCOMPARE(problem->unknown[1].place, std::size_t{8});
        QVERIFY(problem->unknown[1].nearest.empty());
    }

    /// Two letters exchanged in every word: the one that was meant is among the nearest. (A few
    /// then begin another word, "fram" for "farm": those the check word notices.)
    void whatWasMeantIsFound()
    {
        int found = 0;
        for (const std::string_view word : joinWords()) {
            std::string slipped = std::string(word.substr(0, 1)) + word[2] + word[1];
            slipped += word.substr(3);
            if (joinWordAt(slipped))
                continue;
            const auto problem = problemOf(slipped);
            QVERIFY2(problem && problem->kind == Kind::Unknown, slipped.c_str());
            const auto &nearest = problem->unknown.front().nearest;
            QVERIFY2(nearest.size() <= 3 && std::ranges::find(nearest, word) != nearest.end(),
                     slipped.c_str());
            ++found;
        }
        QVERIFY2(found > 950, qPrintable(QString::number(found)));
    }

    void aMissingOrSurplusWordIsCounted()
    {
        std::vector<std::string> words = shown(aSecret());
        const std::string last = words.back();
        words.pop_back();
        QCOMPARE(problemOf(joined(words))->kind, Kind::TooFew);
        QCOMPARE(problemOf(joined(words))->words, std::size_t{8});
        words.insert(words.end(), {last, last});
        QCOMPARE(problemOf(joined(words))->kind, Kind::TooMany);
        QCOMPARE(problemOf(joined(words))->words, std::size_t{10});
    }

    void anythingElseIsAnswered()
    {
        QCOMPARE(problemOf("")->kind, Kind::TooFew);
        QCOMPARE(problemOf(" -- 12345 \u0646\u0627\u0646 ")->kind, Kind::TooFew);
        QCOMPARE(problemOf(std::string(1'000'000, 'a'))->kind, Kind::TooMany);
        QCOMPARE(problemOf(std::string(400, 'a'))->kind, Kind::Unknown);
        QVERIFY(rc::check("any bytes get an answer", [] {
            const auto problem = problemOf(*rc::gen::arbitrary<std::string>());
            RC_ASSERT(problem.has_value());
        }));
    }

    /// tests/data/sync/join_code.json, which Python made from FORMAT.md alone.
    void theSampleOfTheFormatIsRead()
    {
        std::ifstream file(qEnvironmentVariable("LIDLARK_SOURCE_DIR").toStdString() +
                           "/tests/data/sync/join_code.json");
        const auto samples = nlohmann::json::parse(file, nullptr, false);
        QCOMPARE(samples.size(), std::size_t{2});
        for (const auto &sample : samples) {
            const JoinSecret secret = secretFromHex(sample["secret"].get<std::string>());
            QCOMPARE(shown(secret), sample["words"].get<std::vector<std::string>>());
            QCOMPARE(joinFolder(secret), sample["folder"].get<std::string>());
            QCOMPARE(hexOf(joinSealKey(secret).bytes()), sample["seal_key"].get<std::string>());
        }
    }
};

QTEST_APPLESS_MAIN(TestJoinCode)
#include "tst_join_code.moc"
