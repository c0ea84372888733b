#pragma once

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QSizeF>

namespace lidlark::test {

/// A PDF as other programs read it. Source: poppler-utils 22.12 (pdfinfo, pdftotext, pdffonts and
/// pdftoppm), which share no code with what wrote it.
class Printed
{
public:
    explicit Printed(QString file) : m_file(std::move(file)) {}

    /// All words, line by line as they lie on the page.
    [[nodiscard]] QString text() const
    {
        return QString::fromUtf8(run("pdftotext", {"-layout", m_file, "-"}));
    }
    /// Where a word stands on its page, in points from the upper left; empty: nowhere. The first of
    /// several.
    [[nodiscard]] QRectF place(const QString &word) const
    {
        const QRegularExpression form(
            QStringLiteral("xMin=\"([\\d.]+)\" yMin=\"([\\d.]+)\" xMax=\"([\\d.]+)\" "
                           "yMax=\"([\\d.]+)\">%1<")
                .arg(QRegularExpression::escape(word)));
        const auto match = form.match(QString::fromUtf8(run("pdftotext", {"-bbox", m_file, "-"})));
        const auto at = [&match](int i) { return match.captured(i).toDouble(); };
        return {QPointF(at(1), at(2)), QPointF(at(3), at(4))};
    }
    [[nodiscard]] int pages() const { return field("Pages").toInt(); }
    /// Of the first page, in millimetres.
    [[nodiscard]] QSizeF size() const
    {
        const QRegularExpression form(QStringLiteral("([\\d.]+) x ([\\d.]+) pts"));
        const QRegularExpressionMatch match = form.match(field("Page size"));
        constexpr double mmPerPoint = 25.4 / 72; // ISO 32000-1:2008, 8.3.2.3
        return QSizeF(match.captured(1).toDouble(), match.captured(2).toDouble()) * mmPerPoint;
    }
    struct Font {
        QString name;
        bool embedded = false;
    };
    [[nodiscard]] QList<Font> fonts() const
    {
        QList<Font> fonts;
        const QStringList lines =
            QString::fromUtf8(run("pdffonts", {m_file})).split(u'\n', Qt::SkipEmptyParts);
        // Two lines of head; from the end: object, its generation, has a map to words, is a
        // subset, is embedded.
        for (const QString &line : lines.mid(2)) {
            const QStringList words = line.split(u' ', Qt::SkipEmptyParts);
            fonts.append({words.constFirst(), words.at(words.size() - 5) == QLatin1String("yes")});
        }
        return fonts;
    }
    /// The first page, @p dpi dots an inch.
    [[nodiscard]] QImage picture(int dpi, bool grey) const
    {
        QStringList arguments{"-r", QString::number(dpi), "-f", "1", "-l", "1"};
        if (grey)
            arguments.append("-gray");
        arguments.append(m_file);
        return QImage::fromData(run("pdftoppm", arguments));
    }
    [[nodiscard]] QByteArray bytes() const
    {
        QFile file(m_file);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

private:
    static QByteArray run(const char *program, const QStringList &arguments)
    {
        QProcess process;
        process.start(QString::fromLatin1(program), arguments);
        if (!process.waitForFinished(60000) || process.exitCode() != 0)
            qFatal("%s: %s", program, process.readAllStandardError().constData());
        return process.readAllStandardOutput();
    }
    [[nodiscard]] QString field(const char *name) const
    {
        const QRegularExpression form(QStringLiteral("^%1:\\s*(.*)$").arg(QLatin1String(name)),
                                      QRegularExpression::MultilineOption);
        return form.match(QString::fromUtf8(run("pdfinfo", {m_file}))).captured(1);
    }

    QString m_file;
};

} // namespace lidlark::test
