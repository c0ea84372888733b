#include <QTest>

#include "core/base/digest.h"
#include "core/crypto/device_keys.h"
#include "core/crypto/keyed_hash.h"

#include <sodium.h>

using namespace lidlark;
using namespace lidlark::crypto;

namespace {

QByteArray hex(const std::string &bytes)
{
    return QByteArray::fromStdString(bytes).toHex();
}

std::string fromHex(const char *digits)
{
    return QByteArray::fromHex(digits).toStdString();
}

/// BLAKE2b of any length, by the library that ours stands on.
std::string sodiumsHash(std::size_t size, const std::string &text, const std::string &key = {})
{
    std::string hash(size, '\0');
    if (crypto_generichash(reinterpret_cast<unsigned char *>(hash.data()), size, bytesOf(text),
                           text.size(), bytesOf(key), key.size()) != 0)
        qFatal("BLAKE2b");
    return hash;
}

std::string curve(const std::string &scalar, const std::string &point)
{
    std::string product(crypto_scalarmult_BYTES, '\0');
    if (crypto_scalarmult(reinterpret_cast<unsigned char *>(product.data()), bytesOf(scalar),
                          bytesOf(point)) != 0)
        qFatal("X25519");
    return product;
}

const std::string basePoint = '\x09' + std::string(31, '\0');

std::array<std::uint8_t, 32> arrayOf(const std::string &bytes)
{
    std::array<std::uint8_t, 32> array{};
    std::copy(bytes.begin(), bytes.end(), array.begin());
    return array;
}

/// RFC 7693, appendix E: a sequence of Fibonacci's kind.
std::string sequenceOf(std::size_t length, std::uint32_t seed)
{
    std::string bytes;
    std::uint32_t before = 0xDEAD4BADU * seed;
    std::uint32_t last = 1;
    while (bytes.size() < length) {
        const std::uint32_t next = before + last;
        before = last;
        last = next;
        bytes.push_back(static_cast<char>(next >> 24U));
    }
    return bytes;
}

} // namespace

/// Guards that names, keys and letters stand on the BLAKE2b and the X25519 of the RFCs: the library
/// by their vectors, and ours by the library.
class TestHashAndCurve : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(sodium_init() >= 0); }

    /// Source: RFC 7693, appendix A: BLAKE2b-512("abc").
    void theHashOfThreeLetters()
    {
        QCOMPARE(hex(sodiumsHash(64, "abc")),
                 QByteArray("ba80a53f981c4d0d6a2797b69f12f6e94c212f14685ac4b74b12bb6fdbffa2d1"
                            "7d87c5392aab792dc252d5de4533cc9518d38aa8dbf1925ab92386edd4009923"));
    }

    /// Source: RFC 7693, appendix E: the hash of 48 hashes, 20 to 64 bytes long, with and without a
    /// key. Those of 32 bytes, and the last one, are ours.
    void theHashOfHashes()
    {
        std::string hashes;
        for (const std::size_t size : {20U, 32U, 48U, 64U}) {
            for (const std::size_t length : {0U, 3U, 128U, 129U, 255U, 1024U}) {
                const std::string text = sequenceOf(length, static_cast<std::uint32_t>(length));
                const std::string key = sequenceOf(size, static_cast<std::uint32_t>(size));
                const bool ours = size == 32;
                hashes += ours ? textOf(blake2b(text)) : sodiumsHash(size, text);
                hashes += ours ? textOf(keyedHash(Secret<32>(arrayOf(key)), text))
                               : sodiumsHash(size, text, key);
            }
        }
        QCOMPARE(hex(textOf(blake2b(hashes))),
                 QByteArray("c23a7800d98123bd10f506c61e29da5603d763b8bbad2e737f5e765a7bccd475"));
    }

    /// Source: RFC 7748, 5.2, both vectors, and the result after one and after 1,000 rounds.
    void theCurvesProducts()
    {
        QCOMPARE(
            hex(curve(fromHex("a546e36bf0527c9d3b16154b82465edd62144c0ac1fc5a18506a2244ba449ac4"),
                      fromHex("e6db6867583030db3594c1a424b15f7c726624ec26b3353b10a903a6d0ab1c4c"))),
            QByteArray("c3da55379de9c6908e94ea4df28d084f32eccf03491c71f754b4075577a28552"));
        QCOMPARE(
            hex(curve(fromHex("4b66e9d4d1b4673c5ad22691957d6af5c11b6421e0ea01d42ca4169e7918ba0d"),
                      fromHex("e5210f12786811d3f4b7959d0538ae2c31dbe7106fc03c3efc4cd549c715a493"))),
            QByteArray("95cbde9476e8907d7aade45cb4b873f88b595a68799fa152e6f8f7647aac7957"));
        std::string scalar = basePoint;
        std::string point = basePoint;
        for (int round = 1; round <= 1000; ++round) {
            const std::string next = curve(scalar, point);
            point = scalar;
            scalar = next;
            QVERIFY(round > 1 ||
                    hex(scalar) ==
                        "422c8e7a6227d7bca1350b3e2bb7279f7897b87bb6854b783c60e80311ae3079");
        }
        QCOMPARE(hex(scalar),
                 QByteArray("684cf59ba83309552800ef566f2f4d3c1c3887c49360e3875f2eb94d99532c51"));
    }

    /// Source: RFC 7748, 6.1.
    void theSharedSecretOfTwo()
    {
        const std::string a =
            fromHex("77076d0a7318a57d3c16c17251b26645df4c2f87ebc0992ab177fba51db92c2a");
        const std::string b =
            fromHex("5dab087e624a8a4b79e17f8b83800ee66f3bb1292618b6fd1c2f8b27ff88e0eb");
        const QByteArray shared =
            "4a5d9d5ba4ce2de1728e3bf480350f25e07e21c947d19e3376f09b3c1e161742";
        QCOMPARE(hex(curve(a, basePoint)),
                 QByteArray("8520f0098930a754748b7ddcb43ef75a0dbf3a0d26381af4eba4a98eaa9b4e6a"));
        QCOMPARE(hex(curve(b, basePoint)),
                 QByteArray("de9edb7d7b7dc1b4d35b61c2ece435373f8343c85b78674dadfc7e146f882b4f"));
        QCOMPARE(hex(curve(a, curve(b, basePoint))), shared);
        QCOMPARE(hex(curve(b, curve(a, basePoint))), shared);
    }

    /// A letter's key is a point of that curve: of the first half of SHA-512 of the seed
    /// (libsodium, crypto_box_seed_keypair).
    void aLettersKeyLiesOnIt()
    {
        const std::string seed = sequenceOf(32, 7);
        std::string scalar(crypto_hash_sha512_BYTES, '\0');
        crypto_hash_sha512(reinterpret_cast<unsigned char *>(scalar.data()), bytesOf(seed),
                           seed.size());
        QCOMPARE(textOf(letterKeyOf(LetterSeed(arrayOf(seed)))),
                 curve(scalar.substr(0, 32), basePoint));
    }

    /// core/sync/FORMAT.md, 2 and 7: H(key; use), with the library's own keyed hash.
    void everyKeyIsTheKeyedHashOfItsUse()
    {
        const std::string key = sequenceOf(32, 9);
        const Secret<32> secret(arrayOf(key));
        for (const char *use : {"lidlark seal 1", "lidlark name 1"})
            QVERIFY(derivedKey(secret, use).equals(Secret<32>(arrayOf(sodiumsHash(32, use, key)))));
        QVERIFY(signingSeedOf(secret).equals(
            Secret<32>(arrayOf(sodiumsHash(32, "lidlark sign 1", key)))));
        QVERIFY(letterSeedOf(secret).equals(
            Secret<32>(arrayOf(sodiumsHash(32, "lidlark letter 1", key)))));
    }
};

QTEST_APPLESS_MAIN(TestHashAndCurve)
#include "tst_hash_and_curve.moc"
