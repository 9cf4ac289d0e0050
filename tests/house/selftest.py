#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Each rule of the house must be able to fail: a small tree that keeps all of them is broken in one place at a time."""
import sys
import tempfile
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
import includes
import licence
import packages
import qml
import sizes
import tested
import toplevel

SPDX = "// SPDX-License-Identifier: GPL-3.0-or-later\n"
GOOD = {
    "CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\nfind_package(fmt REQUIRED)\n",
    "README.md": "", "DEVELOPERS.md": "", "icons/x.svg": "", "fixtures/x.csv": "",
    "core/LICENSE": "                    GNU GENERAL PUBLIC LICENSE\n",
    "core/base/csv.h": SPDX, "core/base/csv.cpp": SPDX + '#include "core/base/csv.h"\n',
    "core/walk/fold.h": SPDX,
    "core/walk/fold.cpp": SPDX + '#include "core/walk/fold.h"\n#include "core/plan/plan.h"\n#include <string>\n',
    "core/plan/plan.h": SPDX + '#include "core/base/csv.h"\n',
    "core/plan/CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\nadd_library(proofwalk_plan STATIC plan.h)\n"
                                "target_link_libraries(proofwalk_plan PUBLIC proofwalk_base)\n",
    "core/walk/CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\nadd_library(proofwalk_walk STATIC fold.cpp)\n"
                                "target_link_libraries(proofwalk_walk PUBLIC proofwalk_plan)\n",
    "tests/base/csv.cpp": SPDX, "tests/walk/fold.cpp": SPDX,
    "core/words/english/window.toml": "# SPDX-License-Identifier: GPL-3.0-or-later\n[phrases]\n"
                                      "\"window.title\" = \"P\"\n\"window.due.one\" = \"a day\"\n",
    "qml/screens/Main.qml": SPDX + 'import QtQuick\nimport Proofwalk.Parts\nItem { property string s: Words.of("window.title") }\n',
    "qml/models/glance.cpp": SPDX + 'const auto s = phrase("window.due" + count(n));\n',
    "qml/parts/Key.qml": SPDX + "import QtQuick\nText {}\n",
    "tests/qml/models/glance.cpp": SPDX, "tests/qml/gallery/Keys.qml": SPDX + "Key {}\n",
}


class Rules(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.root = Path(self.folder.name)
        for name, text in GOOD.items():
            self.write(name, text)

    def tearDown(self):
        self.folder.cleanup()

    def write(self, name, text):
        path = self.root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")

    def expect(self, rule, *wanted):
        """Those findings and no others, each by how it begins."""
        told = rule(self.root)
        self.assertEqual(len(told), len(wanted), told)
        for finding, start in zip(told, wanted):
            self.assertTrue(finding.startswith(start), finding)

    def testAGoodTreeIsQuiet(self):
        for rule in (includes.rule, licence.rule, sizes.rule, tested.rule, toplevel.rule, qml.rule,
                     lambda root: packages.rule(root, {"libfmt-dev", "qml6-module-qtquick"})):
            self.expect(rule)

    def testAnIncludeThatClimbs(self):
        self.write("core/plan/plan.h", SPDX + '#include <vector>\n#include "core/walk/fold.h"\n')
        self.expect(includes.rule, "core/plan/plan.h:3: plan may not include walk")

    def testAnIncludeBesideIt(self):
        self.write("core/plan/plan.h", SPDX + '#include "core/journal/journal.h"\n')
        self.expect(includes.rule, "core/plan/plan.h:2: plan may not include journal")

    def testBaseKnowsNobody(self):
        self.write("core/base/csv.h", SPDX + '#include "core/words/words.h"\n')
        self.expect(includes.rule, "core/base/csv.h:2: base may not include words")

    def testAnIncludeOfTheWindow(self):
        self.write("core/walk/fold.cpp", SPDX + '#include "qml/models/walk.h"\n')
        self.expect(includes.rule, "core/walk/fold.cpp:2: walk may not include qml")

    def testAnIncludeWithAPathOfItsOwn(self):
        self.write("core/walk/fold.cpp", SPDX + '#include "../../qml/walk.h"\n')
        self.expect(includes.rule, "core/walk/fold.cpp:2: ")

    def testQtWhereItHasNoPlace(self):
        self.write("core/walk/fold.cpp", SPDX + "#include <QString>\n")
        self.expect(includes.rule, "core/walk/fold.cpp:2: walk may not include Qt's <QString>")

    def testQuickInTheReport(self):
        self.write("core/report/pages.h", SPDX + "#include <QPainter>\n#include <QQuickView>\n")
        self.expect(includes.rule, "core/report/pages.h:3: only qml may include <QQuickView>")

    def testALinkThatClimbs(self):
        self.write("core/plan/CMakeLists.txt", GOOD["core/plan/CMakeLists.txt"].replace("_base", "_walk"))
        self.expect(includes.rule, "core/plan/CMakeLists.txt:3: plan may not link proofwalk_walk")

    def testAModuleOfTheWindowThatClimbs(self):
        self.write("qml/parts/Key.qml", SPDX + "import QtQuick\nimport Proofwalk.Models\nText {}\n")
        self.write("qml/models/glance.cpp", SPDX + '#include "qml/parts/words.h"\n#include "qml/screens/x.h"\n')
        self.expect(includes.rule, "qml/models/glance.cpp:3: models may not use screens",
                    "qml/parts/Key.qml:3: parts may not use models")

    def testARoomNobodyKnows(self):
        self.write("core/misc/misc.h", SPDX)
        self.expect(includes.rule, "core/misc/misc.h:1: ")

    def testALicenceLineMissing(self):
        self.write("core/walk/fold.h", "// The fold.\n" + SPDX)
        self.write("tests/x.py", "#!/usr/bin/env python3\nimport os\n")
        self.expect(licence.rule, "core/walk/fold.h:1: ", "tests/x.py:1: ")

    def testAFileTooLong(self):
        self.write("core/walk/fold.cpp", SPDX * 401)
        self.expect(sizes.rule, "core/walk/fold.cpp:401: 401 lines")

    def testAFunctionTooLong(self):
        self.write("core/walk/fold.cpp", SPDX + "void f()\n{\n" + "    g();\n" * 81 + "}\n")
        self.expect(sizes.rule, "core/walk/fold.cpp:3: a function of 81 lines")

    def testALineTooLongOrUnclean(self):
        self.write("core/walk/fold.cpp", SPDX + "x" * 121 + "\n\ty\nz \n")
        self.expect(sizes.rule, "core/walk/fold.cpp:2: 121 signs", "core/walk/fold.cpp:3: a tab",
                    "core/walk/fold.cpp:4: a tab")

    def testAnException(self):
        self.write("core/walk/fold.cpp", SPDX * 401)
        self.write("tests/house/exceptions.txt", "file core/walk/fold.cpp one table\n")
        self.expect(sizes.rule)

    def testAnExceptionWithoutUseOrReason(self):
        self.write("tests/house/exceptions.txt", "file core/walk/fold.cpp\n")
        self.expect(sizes.rule, "tests/house/exceptions.txt:1: gives no reason",
                    "tests/house/exceptions.txt:1: core/walk/fold.cpp breaks the rule no longer")

    def testAFileWithoutATest(self):
        self.write("core/walk/order.cpp", SPDX)
        self.expect(tested.rule, "core/walk/order.cpp:1: has no test")
        self.write("tests/house/tested-through.txt", "tests/walk/fold.cpp: order\n")
        self.expect(tested.rule)

    def testAFileWhoseHeaderATestIncludes(self):
        self.write("core/walk/order.cpp", SPDX)
        self.write("tests/walk/fold.cpp", SPDX + '#include "core/walk/order.h"\n')
        self.expect(tested.rule)

    def testAListOfTestsThatIsOutOfDate(self):
        self.write("core/walk/order.cpp", SPDX)
        self.write("tests/house/tested-through.txt",
                   "tests/walk/gone.cpp: order\ntests/base/csv.cpp: csv\ntests/walk/fold.cpp: x\n")
        self.expect(tested.rule, "tests/house/tested-through.txt:2: core/base/csv.cpp has a test of its own",
                    "tests/house/tested-through.txt:1: there is no tests/walk/gone.cpp",
                    "tests/house/tested-through.txt:3: there is no core/walk/x.cpp")

    def testAPackageNotListed(self):
        self.write("CMakeLists.txt", "# find_package(JPEG)\nfind_package(fmt REQUIRED)\n"
                                     "find_package(Qt6 6.4 REQUIRED\n    COMPONENTS Core Charts)\nfind_package(Odd)\n")
        self.write("qml/Main.qml", "import QtQuick.Controls\n")
        self.expect(lambda root: packages.rule(root, {"libfmt-dev", "qt6-base-dev", "qml6-module-qtquick"}),
                    "CMakeLists.txt:3: Qt6::Charts needs qt6-charts-dev", "CMakeLists.txt:5: which package brings Odd",
                    "qml/Main.qml:1: import QtQuick.Controls needs qml6-module-qtquick-controls")

    def testABareControlInAScreen(self):
        self.write("qml/screens/Main.qml", SPDX + "import QtQuick.Controls\nItem { MouseArea {} }\nText {}\nText { }\n")
        self.expect(qml.rule, "qml/screens/Main.qml:2: imports QtQuick.Controls", "qml/screens/Main.qml:3: a bare MouseArea",
                    "qml/screens/Main.qml:4: a bare Text", "qml/screens/Main.qml:5: a bare Text")

    def testAColourOrASizeBesideTheTheme(self):
        self.write("qml/screens/Main.qml", SPDX + 'Item {\n  color: "#ff0000"\n  color: "red"\n  color: "transparent"\n'
                                           "  font.pixelSize: 11\n  // \"#ff0000\"\n  font.pixelSize: Theme.text\n}\n")
        self.expect(qml.rule, "qml/screens/Main.qml:3: a colour", "qml/screens/Main.qml:4: a colour",
                    "qml/screens/Main.qml:6: a size")

    def testAVar(self):
        self.write("qml/parts/Key.qml", SPDX + "Item {\n  property var rows\n  property variantless x\n}\n")
        self.expect(qml.rule, "qml/parts/Key.qml:3: property var")

    def testACodeWithoutWords(self):
        self.write("qml/screens/Main.qml", SPDX + 'Item { property string s: Words.of(a ? "window.title" : "window.gone") }\n')
        self.write("qml/models/glance.cpp", SPDX + 'f(phrase("other.code"));\nf("window.due");\nf("window.du" + x);\n'
                                            'f("window.du");\n')
        self.expect(qml.rule, "qml/models/glance.cpp:2: other.code", "qml/models/glance.cpp:5: window.du",
                    "qml/screens/Main.qml:2: window.gone")

    def testAModelOrAPartWithoutATest(self):
        self.write("qml/models/rungs.cpp", SPDX)
        self.write("qml/parts/Plate.qml", SPDX)
        self.write("qml/parts/markof.h", SPDX + "QML_ELEMENT\n")
        self.expect(tested.rule, "qml/models/rungs.cpp:1: has no test", "qml/parts/Plate.qml:1: stands in no page",
                    "qml/parts/markof.cpp:1: stands in no page")
        self.write("tests/house/tested-through.txt", "tests/qml/models/glance.cpp: rungs\n")
        self.write("tests/qml/gallery/Keys.qml", SPDX + "Key {}\nPlate {}\nMarkOf {}\n")
        self.expect(tested.rule)

    def testWhatDoesNotBelongAtTheTop(self):
        self.write("Makefile", "")
        (self.root / "README.md").unlink()
        self.expect(toplevel.rule, "Makefile:1: ", "README.md:1: ")


if __name__ == "__main__":
    unittest.main()
