#include <QtTest>

#include "core/base/packed_tree.h"
#include "core/catalogue/catalogue.h"

#include "tests/core/catalogue/shipped_catalogue.h"

using namespace lidlark;

namespace {

YamlNode treeOf(const std::string &text)
{
    return std::get<YamlNode>(readYaml(text));
}

bool same(const YamlNode &one, const YamlNode &other)
{
    return one.kind == other.kind && one.line == other.line && one.key == other.key &&
           one.keyLine == other.keyLine && one.quoted == other.quoted && one.text == other.text &&
           std::equal(one.children.begin(), one.children.end(), other.children.begin(),
                      other.children.end(), same);
}

std::string packedText(const std::string &text)
{
    return packTree(treeOf(text));
}

} // namespace

/// The app opens its catalogue packed: what it reads must be what the YAML says.
class TestPackedTree : public QObject
{
    Q_OBJECT
private slots:
    void theShippedFilesComeBackAsTheyWere()
    {
        int files = 0;
        for (const char *folder : {"items", "activities"}) {
            for (const catalogue::SourceFile &file : shipped::filesIn(folder)) {
                const auto read = readTree(packedText(file.text));
                QVERIFY2(std::holds_alternative<YamlNode>(read), file.name.c_str());
                QVERIFY2(same(std::get<YamlNode>(read), treeOf(file.text)), file.name.c_str());
                ++files;
            }
        }
        QVERIFY(files >= 124);
    }

    /// RFC 8949, section 3.4.6: self-described CBOR begins with 0xd9d9f7.
    void itSaysThatItIsCbor()
    {
        const std::string text = packedText("a: 1");
        QCOMPARE(QByteArray::fromStdString(text.substr(0, 3)).toHex(), QByteArray("d9d9f7"));
        QVERIFY(isPacked(text));
        QVERIFY(!isPacked("a: 1"));
    }

    void whatIsYamlIsStillRead()
    {
        const auto read = readTree("a: [1, two]");
        QVERIFY(same(std::get<YamlNode>(read), treeOf("a: [1, two]")));
    }

    /// However it is torn, it is a fault and never half a file.
    void aTornOneIsAFault()
    {
        const std::string whole = packedText("a: [1, two]\nb: {c: \"d\"}");
        for (std::size_t length = 3; length < whole.size(); ++length)
            QVERIFY(std::holds_alternative<YamlFault>(readTree(whole.substr(0, length))));
        QVERIFY(std::holds_alternative<YamlFault>(readTree(whole + "x")));
    }

    void oneThatIsForeignIsAFault()
    {
        const std::string cbor("\xd9\xd9\xf7");
        for (const char *hex : {"80", "f6", "83010203", "860001600000f480", "8600016000f4",
                                "86020160"
                                "00f48100"}) {
            const std::string text = cbor + QByteArray::fromHex(hex).toStdString();
            QVERIFY2(std::holds_alternative<YamlFault>(readTree(text)), hex);
        }
    }

    /// Lists, maps and strings inside each other (RFC 8949, 3.1 and 3.2) for as long as a file may
    /// be: read by a call a level, they used up the stack.
    void oneThatIsNestedWithoutEndIsAFault()
    {
        for (const char *level : {"\x81", "\xa1\x60", "\x9f", "\x7f", "\x5f"}) {
            std::string text("\xd9\xd9\xf7");
            while (text.size() < yamlSizeLimit)
                text += level;
            QVERIFY(std::holds_alternative<YamlFault>(readTree(text)));
        }
    }

    void itsBoundsAreThoseOfTheYaml()
    {
        YamlNode deep;
        deep.kind = YamlNode::Kind::List;
        for (int i = 0; i < 9; ++i) {
            YamlNode outer;
            outer.kind = YamlNode::Kind::List;
            outer.children.push_back(deep);
            deep = outer;
        }
        QVERIFY(std::holds_alternative<YamlFault>(readTree(packTree(deep))));
        YamlNode wide;
        wide.kind = YamlNode::Kind::List;
        wide.children.resize(20'001);
        QVERIFY(std::holds_alternative<YamlFault>(readTree(packTree(wide))));
    }
};

QTEST_APPLESS_MAIN(TestPackedTree)
#include "tst_packed_tree.moc"
