#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// The first run: three questions and the lid list. The rows are the items of the box.
class WelcomeViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(QString childName MEMBER m_childName NOTIFY changed FINAL)
    /// Completed years; -1: not said.
    Q_PROPERTY(int years MEMBER m_years NOTIFY changed FINAL)
    /// Of the birthday, 1 to 12; 0: not said.
    Q_PROPERTY(int month MEMBER m_month NOTIFY changed FINAL)
    Q_PROPERTY(QString adultName MEMBER m_adultName NOTIFY changed FINAL)
    /// 0 don't know, 1 yes, 2 no.
    Q_PROPERTY(int latex MEMBER m_latex NOTIFY changed FINAL)
    Q_PROPERTY(int wheat MEMBER m_wheat NOTIFY changed FINAL)
    /// "Mirren, 2 years. Puts things in the mouth".
    Q_PROPERTY(QList<QString> otherChildren READ otherChildren NOTIFY changed FINAL)
    /// "Keep the box out of Mirren's reach."; empty: no small child is named.
    Q_PROPERTY(QString outOfReach READ outOfReach NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    enum Role { ItemIdRole = Qt::UserRole, NameRole, DrawingRole, PiecesRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QStringList otherChildren() const;
    [[nodiscard]] QString outOfReach() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    /// Fills the lid list with the standard box.
    Q_INVOKABLE void load();
    Q_INVOKABLE void setPieces(int row, int pieces);
    /// @param years completed, -1 not said; @param mouths 0 don't know, 1 yes, 2 no longer.
    /// @returns false without a name, with `problem` said.
    Q_INVOKABLE bool addChild(const QString &name, int years, int mouths);
    Q_INVOKABLE void removeChild(int row);
    /// Writes everything. @returns false with `problem` said.
    Q_INVOKABLE bool finish();
    /// The same for a further family, in a store of its own.
    Q_INVOKABLE bool finishAnother();
    /// The same for the home of a phone that came in by a code.
    Q_INVOKABLE bool finishHome();

signals:
    void changed();

private:
    struct Row {
        const catalogue::ItemKind *kind = nullptr;
        int pieces = 0;
    };
    struct OtherChild {
        QString name;
        int years = -1;
        child::Answer mouths = child::Answer::Unanswered;
    };
    [[nodiscard]] usecase::FirstAnswers answers() const;
    bool report(const Outcome &done);

    Household *m_household = nullptr;
    QString m_childName;
    QString m_adultName;
    int m_years = -1;
    int m_month = 0;
    int m_latex = 0;
    int m_wheat = 0;
    std::vector<OtherChild> m_others;
    std::vector<Row> m_rows;
    QString m_problem;
};

} // namespace lidlark::mobile
