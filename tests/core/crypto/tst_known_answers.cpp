#include <QTest>

#include "core/crypto/keyed_hash.h"
#include "core/crypto/seal.h"
#include "core/crypto/signature.h"

using namespace lidlark;
using namespace lidlark::crypto;

namespace {

template <std::size_t Size> std::array<std::uint8_t, Size> bytesFrom(const char *hex)
{
    const QByteArray bytes = QByteArray::fromHex(hex);
    std::array<std::uint8_t, Size> array{};
    if (static_cast<std::size_t>(bytes.size()) != Size)
        qFatal("%s: not %zu bytes", hex, Size);
    std::copy(bytes.begin(), bytes.end(), array.begin());
    return array;
}

QByteArray hex(std::string_view bytes)
{
    return QByteArray(bytes.data(), static_cast<qsizetype>(bytes.size())).toHex();
}

const std::string ladies =
    "Ladies and Gentlemen of the class of '99: If I could offer you only one "
    "tip for the future, sunscreen would be it.";
const SealKey draftKey(bytesFrom<32>("808182838485868788898a8b8c8d8e8f"
                                     "909192939495969798999a9b9c9d9e9f"));
const Nonce draftNonce = bytesFrom<24>("404142434445464748494a4b4c4d4e4f5051525354555657");

std::string draftBeside()
{
    return QByteArray::fromHex("50515253c0c1c2c3c4c5c6c7").toStdString();
}

} // namespace

/// Guards that what seals, signs and names is what the standards say, and nothing of our own.
class TestKnownAnswers : public QObject
{
    Q_OBJECT

private slots:
    /// Source: draft-irtf-cfrg-xchacha-03, appendix A.3.1.
    void theSealIsTheDrafts()
    {
        const QByteArray expected =
            "bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb"
            "731c7f1b0b4aa6440bf3a82f4eda7e39ae64c6708c54c216cb96b72e1213b452"
            "2f8c9ba40db5d945b11b69b982c1bb9e3f3fac2bc369488f76b2383565d3fff9"
            "21f9664c97637da9768812f615c68b13b52e"
            "c0875924c1c7987947deafd8780acf49";
        const std::string closed = sealed(ladies, draftBeside(), draftKey, draftNonce);
        QCOMPARE(hex(closed), expected);
        QCOMPARE(opened(closed, draftBeside(), draftKey, draftNonce), std::optional(ladies));
    }

    void aSealThatWasTouchedStaysShut()
    {
        const std::string closed = sealed(ladies, draftBeside(), draftKey, draftNonce);
        for (std::size_t at = 0; at < closed.size(); ++at) {
            std::string touched = closed;
            touched[at] = static_cast<char>(touched[at] ^ 1);
            QVERIFY(!opened(touched, draftBeside(), draftKey, draftNonce));
        }
        QVERIFY(!opened(closed, "", draftKey, draftNonce));
        QVERIFY(!opened(closed, draftBeside(), SealKey(), draftNonce));
        QVERIFY(!opened(closed, draftBeside(), draftKey, Nonce{}));
        QVERIFY(!opened("", "", draftKey, draftNonce));
    }

    /// Source: RFC 8032, 7.1, tests 1, 2 and 3.
    void theSignatureIsTheRfcs_data()
    {
        QTest::addColumn<QByteArray>("seed");
        QTest::addColumn<QByteArray>("key");
        QTest::addColumn<QByteArray>("message");
        QTest::addColumn<QByteArray>("signature");
        QTest::newRow("test 1")
            << QByteArray("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")
            << QByteArray("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a")
            << QByteArray()
            << QByteArray("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
                          "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b");
        QTest::newRow("test 2")
            << QByteArray("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")
            << QByteArray("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c")
            << QByteArray("72")
            << QByteArray("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
                          "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
        QTest::newRow("test 3")
            << QByteArray("c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7")
            << QByteArray("fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025")
            << QByteArray("af82")
            << QByteArray("6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
                          "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a");
    }
    void theSignatureIsTheRfcs()
    {
        QFETCH(QByteArray, seed);
        QFETCH(QByteArray, key);
        QFETCH(QByteArray, message);
        QFETCH(QByteArray, signature);
        const SigningSeed secret(bytesFrom<32>(seed.constData()));
        const std::string text = QByteArray::fromHex(message).toStdString();
        QCOMPARE(hex(textOf(publicKeyOf(secret))), key);
        const Signature made = signatureOf(text, secret);
        QCOMPARE(hex(textOf(made)), signature);
        QVERIFY(isSignedBy(publicKeyOf(secret), text, made));
        QVERIFY(!isSignedBy(publicKeyOf(secret), text + "!", made));
        QVERIFY(!isSignedBy(publicKeyOf(SigningSeed()), text, made));
    }

    /// Source: Python 3.11's hashlib.blake2b(..., digest_size=32, key=bytes(range(32))), a
    /// reference library of general purpose; the algorithm is RFC 7693's.
    void theKeyedHashIsBlake2b_data()
    {
        QTest::addColumn<QByteArray>("message");
        QTest::addColumn<QByteArray>("hash");
        QByteArray all;
        for (int byte = 0; byte < 256; ++byte)
            all.append(static_cast<char>(byte));
        QTest::newRow("nothing")
            << QByteArray()
            << QByteArray("4e51e7a913fc80137da52880fecca175bf81e117d5c68126dc2774033517ea0d");
        QTest::newRow("a zero")
            << QByteArray(1, '\0')
            << QByteArray("41ff93a4eaeebd3b78a93438a6f62a92ab5959c859e682b72c7def406197ca4d");
        QTest::newRow("every byte")
            << all
            << QByteArray("b42be36ea26392f67d1d3706ffa72b6c61c2ff38e1fabd9a49e154d54b967d83");
    }
    void theKeyedHashIsBlake2b()
    {
        QFETCH(QByteArray, message);
        QFETCH(QByteArray, hash);
        std::array<std::uint8_t, 32> key{};
        for (std::size_t i = 0; i < key.size(); ++i)
            key[i] = static_cast<std::uint8_t>(i);
        QCOMPARE(hex(textOf(keyedHash(Secret<32>(key), message.toStdString()))), hash);
    }

    void oneUseSaysNothingOfAnother()
    {
        const Secret<32> seal = derivedKey(draftKey, "lidlark seal 1");
        const Secret<32> name = derivedKey(draftKey, "lidlark name 1");
        QVERIFY(!seal.equals(name));
        QVERIFY(!seal.equals(draftKey));
        QVERIFY(seal.equals(derivedKey(draftKey, "lidlark seal 1")));
    }
};

QTEST_APPLESS_MAIN(TestKnownAnswers)
#include "tst_known_answers.moc"
