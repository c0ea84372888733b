#include <QtTest>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

/// Guards `lidlark-cli recheck`: a changed measure or tag re-runs the gate for every box of a store
/// and says who is touched. The island's therapist holds ten boxes (job.md 4).
class TestRecheckCommand : public QObject
{
    Q_OBJECT

private:
    struct Answer {
        int status = -1;
        QJsonObject json;
        QString problem;
    };

    QTemporaryDir m_folder;

    static Answer run(const QStringList &arguments)
    {
        QProcess process;
        process.start(qEnvironmentVariable("LIDLARK_CLI"), arguments);
        process.waitForFinished(60'000);
        return {process.exitCode(),
                QJsonDocument::fromJson(process.readAllStandardOutput()).object(),
                QString::fromUtf8(process.readAllStandardError())};
    }

    /// The shipped file with one text changed, in a folder of its own kind.
    QString changed(const QString &kind, const QString &name, const QByteArray &what,
                    const QByteArray &with)
    {
        QFile file(qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/assets/catalogue/" + kind + "/" +
                   name);
        if (!file.open(QIODevice::ReadOnly))
            return {};
        QByteArray text = file.readAll();
        if (!text.contains(what))
            return {};
        QDir(m_folder.path()).mkpath(kind);
        QFile copy(m_folder.filePath(kind + "/" + name));
        if (!copy.open(QIODevice::WriteOnly | QIODevice::Truncate))
            return {};
        copy.write(text.replace(what, with));
        return copy.fileName();
    }

    Answer recheck(const QStringList &files) const
    {
        return run(QStringList{"recheck"} + files +
                   QStringList{"--json", "--store", m_folder.filePath("morven.lidlark"), "--clock",
                               "2027-01-15T18:25:00Z"});
    }

    static QStringList hiddenFor(const Answer &answer, const QString &child)
    {
        QStringList ids;
        for (const QJsonValue box : answer.json["boxes"].toArray()) {
            if (box["child"].toString() != child)
                continue;
            for (const QJsonValue entry : box["hidden"].toArray())
                ids.append(entry["id"].toString());
        }
        return ids;
    }

private slots:
    void initTestCase() { QCOMPARE(run({"demo", m_folder.path()}).status, 0); }

    void nothingChangedTouchesNobody()
    {
        const Answer answer = recheck({changed("items", "eyes.yaml", "Wash.", "Wash them.")});
        QCOMPARE(answer.status, 0);
        QVERIFY(answer.json["boxes"].toArray().isEmpty());
    }

    /// A cup that no longer crushes may stick over a face: homes with an under-three lose it.
    void aChangedMeasureIsFeltWhereAnUnderThreeLives()
    {
        const Answer answer =
            recheck({changed("items", "cups.yaml", "stiff: false", "stiff: true")});
        QCOMPARE(answer.status, 0);
        QVERIFY(hiddenFor(answer, "Lewis").contains("tumbledown-quay"));
        QVERIFY(hiddenFor(answer, "Fin").isEmpty());
    }

    /// A measure that contradicts the written tags takes the item out, and every entry that needs
    /// it, with the file, the line and the field named.
    void aContradictionIsRefusedAndItsEntriesAreHidden()
    {
        const Answer answer =
            recheck({changed("items", "onepegs.yaml", "mm: [67, 12, 10]", "mm: [40, 12, 10]")});
        QCOMPARE(answer.status, 1);
        QVERIFY(answer.json["problems"].toArray().contains(
            "items/onepegs.yaml:8: tags: SMALL is missing: it fits the small parts cylinder"));
        QVERIFY(hiddenFor(answer, "Fin").contains("gusty-shirts"));
    }

    void aRaisedFloorHidesAndOtherCautionsAreListed()
    {
        const Answer raised = recheck({changed("activities", "gusty-shirts.yaml",
                                               "age_floor_months: 36", "age_floor_months: 131")});
        QVERIFY(hiddenFor(raised, "Fin").contains("gusty-shirts"));
        const Answer cautions =
            recheck({changed("activities", "gusty-shirts.yaml", "cautions: [PINCH, SMALL, PAPER]",
                             "cautions: [PINCH, SMALL, PAPER, TRIP]")});
        bool listed = false;
        for (const QJsonValue box : cautions.json["boxes"].toArray())
            listed = listed || box["changed"].toArray().contains("gusty-shirts");
        QVERIFY(listed);
    }

    void aFileThatIsNotThereIsNamed()
    {
        const Answer answer = recheck({m_folder.filePath("items/nothing.yaml")});
        QCOMPARE(answer.status, 1);
        QVERIFY(answer.problem.contains("nothing.yaml"));
        QCOMPARE(run({"recheck"}).status, 2);
    }
};

QTEST_APPLESS_MAIN(TestRecheckCommand)
#include "tst_recheck_command.moc"
