#include "tests/mutation/find_mutants.h"
#include "tests/mutation/mutant_list.h"

#include <QtTest/QtTest>

using namespace lidlark::mutation;

// What lidlark-mutate finds in made-up code, and what it leaves alone. Without this a change of
// style could quietly leave the gate with fewer mutants.

class TestFindMutants : public QObject
{
    Q_OBJECT

private slots:
    void eachKindIsFound_data();
    void eachKindIsFound();
    void theRestIsLeftAlone_data();
    void theRestIsLeftAlone();
    void nothingIsKnownBeforehand();
    void anElseStaysWithItsIf();
    void theListIsReadBack();
    void anEntryWithoutItsReasonIsRefused();
};

namespace {

std::vector<Mutant> mutantsIn(const std::string &text, std::string *copied = nullptr)
{
    const CppSource source("a.cpp", text);
    std::vector<Mutant> all;
    MutatedCopy copy(source, all);
    mutateAll(copy, functionsWithoutValue(source));
    if (copied)
        *copied = copy.text();
    return all;
}

QString told(const std::vector<Mutant> &mutants)
{
    QStringList lines;
    for (const Mutant &mutant : mutants)
        lines << QString::fromStdString(mutant.what);
    return lines.join("; ");
}

std::string inAFunction(const QString &body)
{
    return "bool f(int a, int b)\n{\n    " + body.toStdString() + "\n}\n";
}

} // namespace

void TestFindMutants::eachKindIsFound_data()
{
    QTest::addColumn<QString>("body");
    QTest::addColumn<QString>("mutants");
    const auto row = [](const char *body, const char *mutants) {
        QTest::newRow(body) << body << mutants;
    };
    row("if (a) return b;", "never: if: a; always: if: a");
    row("if (const T *p = g(a)) return b;", "never: if: g(a)");
    row("if (a; b) return b;", "never: if: b; always: if: b");
    row("return a ? b : c;", "never: choice: a; always: choice: a");
    row("return a && b;", "left out of &&: a; left out of &&: b");
    row("return a || b && c;", "left out of ||: a; left out of ||: b && c; left out of &&: b; "
                               "left out of &&: c");
    row("return g(a && (b || c));", "left out of &&: a; left out of &&: (b || c); "
                                    "left out of ||: b; left out of ||: c");
    row("return a < b;", "the other comparison: a < b");
    row("return a | b;", "left out of |: a; left out of |: b");
    row("return a & b;", "left out of &: a; left out of &: b");
    row("return a.without(b);", "takes nothing away: b");
    row("return std::max(a, b);", "the other extreme: max(a, b)");
    row("return c::Tag::Foil;", "no tag for c::Tag::Foil");
    row("return Supervision::Near;",
        "the next value for Supervision::Near; the next value but one for Supervision::Near");
    row("return ReasonCode::QuietNow;", "the next code for ReasonCode::QuietNow");
    row("return true;", "the opposite of true");
    row("return 36;", "37 for 36; 35 for 36; 0 for 36");
    row("constexpr int floor = 1;", "2 for 1; 0 for 1");
    row("switch (a) { case E::X: return b; }", "left out: case E::X");
    row("return T{.name = a};", "left empty: .name = a");
    row("a.b->c(a);", "skipped: a.b->c(a);");
    row("a[b] += c;", "skipped: a[b] += c;");
    row("++a;", "skipped: ++a;");
    row("for (const T &x : a) x.g();", "skipped: x.g();");
    row("const auto g = [&] { h(a); };", "skipped: h(a);");
}

void TestFindMutants::eachKindIsFound()
{
    QFETCH(QString, body);
    QFETCH(QString, mutants);
    const std::vector<Mutant> found = mutantsIn(inAFunction(body));
    QCOMPARE(told(found), mutants);
    for (const Mutant &mutant : found) {
        QCOMPARE(mutant.line, 3);
        QCOMPARE(QString::fromStdString(mutant.lineText), body);
    }
}

void TestFindMutants::theRestIsLeftAlone_data()
{
    QTest::addColumn<QString>("text");
    for (const char *text :
         {"// if (a) b();\n", "/* a && b */\n", "#define F(a) \\\n    if (a) b()\n",
          "const char *words()\n{\n    return \"a && b < 3\";\n}\n",
          "using T = std::array<int, 3>;\n",
          "struct S {\n    int limit = 3;\n    bool here = true;\n};\n",
          "enum class E { A = 1 };\n", "static_assert(sizeof(int) == 4);\n",
          "void f(int a, bool b = true);\n",
          "void f()\n{\n    while (a < b && c) {\n    }\n    for (auto &&x : y) {\n    }\n}\n",
          "auto f()\n{\n    std::vector<T> forms;\n    T g{};\n    return forms;\n}\n"})
        QTest::newRow(text) << text;
}

void TestFindMutants::theRestIsLeftAlone()
{
    QFETCH(QString, text);
    QCOMPARE(told(mutantsIn(text.toStdString())), QString());
}

void TestFindMutants::nothingIsKnownBeforehand()
{
    std::string copy;
    QCOMPARE(told(mutantsIn("constexpr int f() { return g; }\n"
                            "inline constexpr TagSet few{Tag::Foil};\n"
                            "static_assert(f() == 3);\n"
                            "void g();\n"
                            "void h() { for (const auto r : {g, k}) r(); }\n",
                            &copy)),
             QString("no tag for Tag::Foil; skipped: r();; left out of the rules: g"));
    const QString text = QString::fromStdString(copy);
    QVERIFY(!text.contains("constexpr") && !text.contains("static_assert"));
    QVERIFY(text.contains("inline int f()") && text.contains("inline const TagSet few{"));
}

void TestFindMutants::anElseStaysWithItsIf()
{
    std::string copy;
    mutantsIn(inAFunction("if (a) g(); else h();"), &copy);
    const QString text = QString::fromStdString(copy).simplified();
    QVERIFY2(text.contains("g(); } else { if"), qPrintable(text));
}

void TestFindMutants::theListIsReadBack()
{
    const std::vector<ListedMutant> read = mutantsFrom("7\ta.cpp\t3\t37 for 36\treturn 36;\n");
    QCOMPARE(read.size(), std::size_t{1});
    QCOMPARE(QString::fromStdString(read.front().text()),
             QString("a.cpp:3: 37 for 36   [return 36;]"));
    const std::vector<Equivalent> equivalents = equivalentsFrom(
        "# About.\n\na.cpp\n37 for 36\nreturn 36;\nwhy: nobody asks.\n\na.cpp\nx\ny\nwhy: z\n");
    QCOMPARE(equivalents.size(), std::size_t{2});
    QVERIFY(equivalents.front().names(read.front()));
    QVERIFY(!equivalents.back().names(read.front()));
}

void TestFindMutants::anEntryWithoutItsReasonIsRefused()
{
    QVERIFY_THROWS_EXCEPTION(std::runtime_error, equivalentsFrom("a.cpp\n37 for 36\nreturn 36;\n"));
    QVERIFY_THROWS_EXCEPTION(std::runtime_error, mutantsFrom("no mutant\n"));
}

QTEST_APPLESS_MAIN(TestFindMutants)
#include "tst_find_mutants.moc"
