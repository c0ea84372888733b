#include <QTest>

#include "core/crypto/letter.h"

#include <sodium.h>

using namespace lidlark;
using namespace lidlark::crypto;

namespace {

std::array<std::uint8_t, 32> filled(std::uint8_t byte)
{
    std::array<std::uint8_t, 32> bytes{};
    bytes.fill(byte);
    return bytes;
}

const LetterSeed gransSeed(filled(0x22));
const LetterSeed chance(filled(0x33));
const std::string text("a key\0of thirty-two bytes, or so", 32);

/// Gran's pair as libsodium makes it from the same seed (crypto_box_seed_keypair).
struct SodiumPair {
    std::array<std::uint8_t, crypto_box_PUBLICKEYBYTES> key{};
    std::array<std::uint8_t, crypto_box_SECRETKEYBYTES> secret{};
    explicit SodiumPair(const LetterSeed &seed)
    {
        crypto_box_seed_keypair(key.data(), secret.data(), seed.data());
    }
};

} // namespace

/// Letters are sealed boxes of libsodium, judged by libsodium itself (its header crypto_box.h).
class TestLetter : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(sodium_init() >= 0); }

    void theKeyIsSodiumsOwn() { QVERIFY(letterKeyOf(gransSeed) == SodiumPair(gransSeed).key); }

    void sodiumOpensOurs()
    {
        const SodiumPair pair(gransSeed);
        const std::string letter = letterTo(letterKeyOf(gransSeed), text, chance);
        QCOMPARE(letter.size(), text.size() + crypto_box_SEALBYTES);
        std::string read(text.size(), '\0');
        QCOMPARE(crypto_box_seal_open(reinterpret_cast<unsigned char *>(read.data()),
                                      bytesOf(letter), letter.size(), pair.key.data(),
                                      pair.secret.data()),
                 0);
        QVERIFY(read == text);
    }

    void weOpenSodiums()
    {
        const SodiumPair pair(gransSeed);
        std::string letter(text.size() + crypto_box_SEALBYTES, '\0');
        QCOMPARE(crypto_box_seal(reinterpret_cast<unsigned char *>(letter.data()), bytesOf(text),
                                 text.size(), pair.key.data()),
                 0);
        QVERIFY(letterOpened(letter, gransSeed) == text);
    }

    void everyBitAndEveryByteCounts()
    {
        const std::string letter = letterTo(letterKeyOf(gransSeed), text, chance);
        for (std::size_t bit = 0; bit < letter.size() * 8; ++bit) {
            std::string other = letter;
            other[bit / 8] = static_cast<char>(other[bit / 8] ^ (1 << (bit % 8)));
            QVERIFY2(!letterOpened(other, gransSeed), qPrintable(QString::number(bit)));
        }
        for (std::size_t size = 0; size < letter.size(); ++size)
            QVERIFY(!letterOpened(letter.substr(0, size), gransSeed));
        QVERIFY(!letterOpened(letter + '\0', gransSeed));
    }

    void nobodyElseOpensIt()
    {
        const std::string letter = letterTo(letterKeyOf(gransSeed), text, chance);
        QVERIFY(!letterOpened(letter, chance));
    }
};

QTEST_APPLESS_MAIN(TestLetter)
#include "tst_letter.moc"
