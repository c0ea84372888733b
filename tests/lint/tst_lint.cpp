#include "tests/lint/batch.h"
#include "tests/lint/tidy.h"

#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QProcess>
#include <QtCore/QTemporaryDir>
#include <QtTest/QtTest>

using namespace lidlark::lint;

/// The lints themselves: each has to find what is wrong in a made-up project, and nothing in the
/// same project put right.
class TestLint : public QObject
{
    Q_OBJECT

private slots:
    void init();
    void commandsAreRead();
    void likeFilesAreReadTogether();
    void testsAreReadTogether();
    void aBatchIsHalved();
    void findingsAreToldApart();
    void tidyFindsAndRemembers();
    void tidyPartsFilesThatClash();
    void tidyRefusesAnEmptyProject();
    void formatFinds();
    void qmllintFinds();
    void qmllintFindsAFileWithoutAModule();

private:
    struct Answer {
        int status = -1;
        QString output;
    };
    void write(const QString &path, const QString &text) const;
    void writeCommandsFor(const QStringList &sources) const;
    [[nodiscard]] QString at(const QString &path) const { return m_project->filePath(path); }
    static Answer ask(const char *program, const QStringList &arguments);
    [[nodiscard]] Answer tidy() const;
    [[nodiscard]] Answer format() const;
    [[nodiscard]] Answer qmllint() const;

    std::unique_ptr<QTemporaryDir> m_project;
};

void TestLint::init()
{
    m_project = std::make_unique<QTemporaryDir>();
    QVERIFY(m_project->isValid());
    const QDir source(qEnvironmentVariable("LIDLARK_SOURCE_DIR"));
    for (const QString &settings : QStringList{".clang-format", ".clang-tidy", ".qmllint.ini"})
        QVERIFY(QFile::copy(source.filePath(settings), at(settings)));
}

void TestLint::write(const QString &path, const QString &text) const
{
    QVERIFY(QFileInfo(at(path)).dir().mkpath("."));
    QFile file(at(path));
    QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    file.write(text.toUtf8());
}

void TestLint::writeCommandsFor(const QStringList &sources) const
{
    QStringList entries;
    for (const QString &source : sources)
        entries << QString(R"({"directory": "%1", "file": "%2",)"
                           R"( "command": "/usr/bin/c++ -std=c++20 -I%1 -o x.o -c %2"})")
                       .arg(m_project->path(), at(source));
    write("build/compile_commands.json", "[" + entries.join(",\n") + "]");
}

TestLint::Answer TestLint::ask(const char *program, const QStringList &arguments)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(qEnvironmentVariable(program), arguments);
    if (!process.waitForFinished(-1) || process.exitStatus() != QProcess::NormalExit)
        return {-1, process.errorString()};
    return {process.exitCode(), process.readAll()};
}

TestLint::Answer TestLint::tidy() const
{
    return ask("LIDLARK_LINT_TIDY", {qEnvironmentVariable("LIDLARK_LINT_CLANG_TIDY"),
                                     m_project->path(), at("build"), "core"});
}

TestLint::Answer TestLint::format() const
{
    return ask("LIDLARK_LINT_CMAKE",
               {"-DPROGRAM=" + qEnvironmentVariable("LIDLARK_LINT_CLANG_FORMAT"),
                "-DROOT=" + m_project->path(), "-P",
                qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/tests/lint/clang_format.cmake"});
}

TestLint::Answer TestLint::qmllint() const
{
    return ask("LIDLARK_LINT_CMAKE",
               {"-DPROGRAM=" + qEnvironmentVariable("LIDLARK_LINT_QMLLINT"),
                "-DROOT=" + m_project->path(), "-DBUILD=" + at("build"),
                "-DQT_QML=" + qEnvironmentVariable("LIDLARK_LINT_QT_QML"), "-P",
                qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/tests/lint/qmllint.cmake"});
}

void TestLint::commandsAreRead()
{
    const std::string json = R"([
        {"directory": "/b", "file": "/p/core/z.cpp",
         "command": "c++ -O2 -Winvalid-pch -include /b/z.dir/cmake_pch.hxx -o z.o -c /p/core/z.cpp"},
        {"directory": "/b", "file": "/p/core/a.cpp", "command": "c++ -o a.o -c /p/core/a.cpp"},
        {"directory": "/b", "file": "/p/core/z.cpp", "command": "c++ -g -o y.o -c /p/core/z.cpp"},
        {"directory": "/b", "file": "/p/corest/z.cpp", "command": "c++ -o q.o -c /p/q.cpp"},
        {"directory": "/b", "file": "/b/moc.cpp", "command": "c++ -o m.o -c /b/moc.cpp"}])";
    const std::vector<CompileCommand> expected{{"/p/core/a.cpp", "/b", "c++"},
                                               {"/p/core/z.cpp", "/b", "c++ -O2"}};
    QCOMPARE(commandsBelow("/p/core", json), expected);
}

void TestLint::likeFilesAreReadTogether()
{
    const CompileCommand a{"/p/core/a.cpp", "/b", "c++"};
    const CompileCommand b{"/p/core/b.cpp", "/b", "c++"};
    const CompileCommand c{"/p/core/c.cpp", "/b", "c++"};
    const CompileCommand otherFlags{"/p/core/d.cpp", "/b", "c++ -g"};
    const CompileCommand otherFolder{"/p/more/e.cpp", "/b", "c++"};
    QCOMPARE(batchesOf({a, otherFlags, b, c, otherFolder}, 2),
             (std::vector<Batch>{{a, b}, {c, otherFolder}, {otherFlags}}));
}

/// Each test has a main() and a folder of moc's: neither keeps two apart.
void TestLint::testsAreReadTogether()
{
    const CompileCommand a{"/p/t/a.cpp", "/b", "c++ -I/b/a_autogen/include -I/p"};
    const CompileCommand b{"/p/t/b.cpp", "/b", "c++ -I/b/b_autogen/include -I/p"};
    QCOMPARE(batchesOf({a, b}, 2), (std::vector<Batch>{{a, b}}));
    const CompileCommand box{"/p/mobile/box/b.cpp", "/b", "c++ -I/p/mobile/box -I/p"};
    const CompileCommand week{"/p/mobile/week/w.cpp", "/b", "c++ -I/p/mobile/week -I/p"};
    QCOMPARE(batchesOf({box, week}, 2), (std::vector<Batch>{{box, week}}));
    QCOMPARE(flagsOf({box, week}), std::string("c++ -I/p/mobile/box -I/p -I/p/mobile/week"));
    QCOMPARE(flagsOf({a, b}),
             std::string("c++ -I/b/a_autogen/include -I/p -I/b/b_autogen/include"));
    const std::string source = sourceOf({a, b});
    QVERIFY(source.find("main mainOf1\n#include \"/p/t/a.cpp\"") != std::string::npos);
    QVERIFY(source.find("main mainOf2\n#include \"/p/t/b.cpp\"") != std::string::npos);
}

void TestLint::aBatchIsHalved()
{
    const CompileCommand a{"/p/a.cpp", "/b", "c++"};
    const CompileCommand b{"/p/b.cpp", "/b", "c++"};
    const CompileCommand c{"/p/c.cpp", "/b", "c++"};
    QCOMPARE(halvesOf({a, b, c}), (std::pair<Batch, Batch>{{a}, {b, c}}));
}

void TestLint::findingsAreToldApart()
{
    const std::string output = "12 warnings generated.\n"
                               "/p/a.h:3:1: error: one [check]\n  code\n  ^\n"
                               "/p/a.h:9:2: note: belongs to it\n"
                               "/p/b.h:4:7: warning: two [check]\n";
    const std::vector<std::string> expected{
        "/p/a.h:3:1: error: one [check]\n  code\n  ^\n/p/a.h:9:2: note: belongs to it\n",
        "/p/b.h:4:7: warning: two [check]\n"};
    QCOMPARE(findingsIn(output), expected);
}

void TestLint::tidyFindsAndRemembers()
{
    write("core/a.h", "#pragma once\nint *one();\n");
    write("core/a.cpp", "#include \"core/a.h\"\nint *one() { return nullptr; }\n");
    write("core/b.cpp", "int *two() { return 0; }\n");
    writeCommandsFor({"core/a.cpp", "core/b.cpp"});
    const Answer found = tidy();
    QCOMPARE(found.status, 1);
    QVERIFY2(found.output.contains("b.cpp:1:21: error: use nullptr"), qPrintable(found.output));

    write("core/b.cpp", "int *two() { return nullptr; }\n");
    const Answer put = tidy();
    QVERIFY2(put.status == 0 && put.output.contains("2 to read"), qPrintable(put.output));
    QVERIFY(tidy().output.contains("0 to read"));

    write("core/a.h", "#pragma once\nint *one();\ninline int *three() { return 0; }\n");
    const Answer header = tidy();
    QVERIFY2(header.output.contains("1 to read"), qPrintable(header.output));
    QCOMPARE(header.status, 1);
    QVERIFY(header.output.contains("a.h:3:"));
}

void TestLint::tidyPartsFilesThatClash()
{
    for (const QString &name : QStringList{"core/a.cpp", "core/b.cpp", "core/c.cpp"})
        write(name, "namespace {\nint *same() { return nullptr; }\n} // namespace\n"
                    "int *of_" +
                        name.mid(5, 1) + "() { return same(); }\n");
    writeCommandsFor({"core/a.cpp", "core/b.cpp", "core/c.cpp"});
    const Answer answer = tidy();
    QVERIFY2(answer.status == 0, qPrintable(answer.output));

    write("core/c.cpp", "int broken( { }\n");
    QCOMPARE(tidy().status, 1);
}

void TestLint::tidyRefusesAnEmptyProject()
{
    writeCommandsFor({});
    QCOMPARE(tidy().status, 1);
}

void TestLint::formatFinds()
{
    QVERIFY(format().status != 0);
    write("core/a.h", "#pragma once\nint  one( );\n");
    const Answer found = format();
    QVERIFY2(found.status != 0 && found.output.contains("a.h:2:"), qPrintable(found.output));
    write("core/a.h", "#pragma once\nint one();\n");
    const Answer put = format();
    QVERIFY2(put.status == 0, qPrintable(put.output));
}

void TestLint::qmllintFinds()
{
    QVERIFY(qmllint().status != 0);
    write("build/mobile/a.qrc", "<file alias=\"A.qml\">" + at("mobile/A.qml") + "</file>");
    write("mobile/A.qml", "import QtQuick\nItem {\n    width: sideways\n}\n");
    const Answer unqualified = qmllint();
    QVERIFY2(unqualified.status != 0 && unqualified.output.contains("Unqualified access"),
             qPrintable(unqualified.output));
    write("mobile/A.qml",
          "import QtQuick\nimport QtQuick.Templates as T\nItem {\n    width: 2\n}\n");
    const Answer unused = qmllint();
    QVERIFY2(unused.status != 0 && unused.output.contains("Unused import"),
             qPrintable(unused.output));
    write("mobile/A.qml", "import QtQuick\nItem {\n    width: 2\n}\n");
    const Answer put = qmllint();
    QVERIFY2(put.status == 0, qPrintable(put.output));
}

void TestLint::qmllintFindsAFileWithoutAModule()
{
    write("build/mobile/a.qrc", "<file alias=\"A.qml\">" + at("mobile/A.qml") + "</file>");
    write("mobile/A.qml", "import QtQuick\nItem {}\n");
    write("mobile/Stray.qml", "import QtQuick\nItem {}\n");
    const Answer found = qmllint();
    QVERIFY2(found.status != 0 && found.output.contains("mobile/Stray.qml"),
             qPrintable(found.output));
}

QTEST_GUILESS_MAIN(TestLint)
#include "tst_lint.moc"
