<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en_US">
<context>
    <name>ribwright::BatchPanel</name>
    <message>
        <source>Confirm the &amp;pattern…</source>
        <translation>Confirmar el &amp;patrón…</translation>
    </message>
    <message>
        <source>Drill batches of the chosen wall</source>
        <translation>Lotes de perforación de la pared elegida</translation>
    </message>
    <message>
        <source>No sheet of this wall is drilled in a stack.</source>
        <translation>Ninguna lámina de esta pared se perfora en pila.</translation>
    </message>
    <message>
        <source>%1 of %2 cleared. Drill nothing in a batch that is held.</source>
        <translation>%1 de %2 liberados. No perfore nada de un lote retenido.</translation>
    </message>
</context>
<context>
    <name>ribwright::Batches</name>
    <message>
        <source>cleared</source>
        <translation>liberado</translation>
    </message>
    <message>
        <source>held</source>
        <translation>retenido</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Láminas</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>May be drilled</source>
        <translation>Se puede perforar</translation>
    </message>
    <message>
        <source>Rows from the lower end; or why it is held and what to do</source>
        <translation>Hileras desde el extremo inferior; o por qué está retenido y qué hacer</translation>
    </message>
    <message>
        <source>%1 is held again</source>
        <translation>%1 vuelve a estar retenido</translation>
    </message>
    <message>
        <source>%1 are held again</source>
        <translation>%1 vuelven a estar retenidos</translation>
    </message>
    <message>
        <source>%1: print its template anew</source>
        <translation>%1: imprima de nuevo su plantilla</translation>
    </message>
    <message>
        <source>%1: print their templates anew</source>
        <translation>%1: imprima de nuevo sus plantillas</translation>
    </message>
    <message>
        <source>%1 is cleared</source>
        <translation>%1 queda liberado</translation>
    </message>
    <message>
        <source>%1 are cleared</source>
        <translation>%1 quedan liberados</translation>
    </message>
</context>
<context>
    <name>ribwright::BayDialog</name>
    <message>
        <source>Repeat along bays</source>
        <translation>Repetir a lo largo de los entreejes</translation>
    </message>
    <message>
        <source>&amp;From bay</source>
        <translation>&amp;Desde el entreeje</translation>
    </message>
    <message>
        <source>&amp;To bay</source>
        <translation>&amp;Hasta el entreeje</translation>
    </message>
</context>
<context>
    <name>ribwright::BlankView</name>
    <message>
        <source>The chosen blank</source>
        <translation>La lámina elegida</translation>
    </message>
</context>
<context>
    <name>ribwright::BoardTools</name>
    <message>
        <source>place from the left corner and the concrete</source>
        <translation>lugar desde la esquina izquierda y el concreto</translation>
    </message>
    <message>
        <source>length, or width × height</source>
        <translation>longitud, o ancho × alto</translation>
    </message>
    <message>
        <source>Drag from corner to corner, or click one corner and type width × height</source>
        <translation>Arrastre de esquina a esquina, o haga clic en una esquina y escriba ancho × alto</translation>
    </message>
    <message>
        <source>Drag from corner to corner, or click one corner and type its size</source>
        <translation>Arrastre de esquina a esquina, o haga clic en una esquina y escriba su tamaño</translation>
    </message>
    <message>
        <source>&amp;Choose and move</source>
        <translation>&amp;Elegir y mover</translation>
    </message>
    <message>
        <source>Click to choose, drag to move, drag an edge to resize; Shift and drag chooses all in a frame</source>
        <translation>Clic para elegir, arrastrar para mover, arrastrar un borde para cambiar el tamaño; Mayús y arrastrar elige todo lo que hay en un marco</translation>
    </message>
    <message>
        <source>&amp;Window</source>
        <translation>&amp;Ventana</translation>
    </message>
    <message>
        <source>Walk &amp;door</source>
        <translation>&amp;Puerta peatonal</translation>
    </message>
    <message>
        <source>&amp;Overhead door</source>
        <translation>Puerta &amp;levadiza</translation>
    </message>
    <message>
        <source>&amp;Sliding door</source>
        <translation>Puerta &amp;corredera</translation>
    </message>
    <message>
        <source>&amp;Louvre</source>
        <translation>&amp;Rejilla</translation>
    </message>
    <message>
        <source>&amp;Framed opening</source>
        <translation>Vano con &amp;marco</translation>
    </message>
    <message>
        <source>&amp;Round hole</source>
        <translation>Agujero re&amp;dondo</translation>
    </message>
    <message>
        <source>Rectangular &amp;hole</source>
        <translation>Agujero rectan&amp;gular</translation>
    </message>
    <message>
        <source>&amp;Girt</source>
        <translation>L&amp;arguero</translation>
    </message>
    <message>
        <source>Click at its height, or type the height</source>
        <translation>Haga clic a su altura, o escriba la altura</translation>
    </message>
    <message>
        <source>Colum&amp;n</source>
        <translation>Colum&amp;na</translation>
    </message>
    <message>
        <source>Click where it stands, or type how far from the left corner</source>
        <translation>Haga clic donde está, o escriba la distancia a la esquina izquierda</translation>
    </message>
    <message>
        <source>&amp;Expansion joint</source>
        <translation>&amp;Junta de dilatación</translation>
    </message>
    <message>
        <source>Click where sheets part, or type how far from the left corner</source>
        <translation>Haga clic donde se separan las láminas, o escriba la distancia a la esquina izquierda</translation>
    </message>
    <message>
        <source>&amp;Band limit</source>
        <translation>Límite de &amp;franja</translation>
    </message>
    <message>
        <source>Click at the height where other sheets begin, or type it</source>
        <translation>Haga clic a la altura donde empiezan otras láminas, o escríbala</translation>
    </message>
    <message>
        <source>Click where the concrete steps, at its new height</source>
        <translation>Haga clic donde el concreto tiene el escalón, a su nueva altura</translation>
    </message>
    <message>
        <source>&amp;Point of the top</source>
        <translation>Punto de la parte s&amp;uperior</translation>
    </message>
    <message>
        <source>Click a new point of a free wall&apos;s steel line</source>
        <translation>Haga clic en un punto nuevo de la línea de acero de una pared libre</translation>
    </message>
    <message>
        <source>S&amp;tep of the concrete</source>
        <translation>E&amp;scalón del concreto</translation>
    </message>
</context>
<context>
    <name>ribwright::BuildingDialog</name>
    <message>
        <source>Building</source>
        <translation>Edificio</translation>
    </message>
    <message>
        <source>&amp;Put them at the nearest place where they fit</source>
        <translation>&amp;Ponerlos en el lugar más cercano donde quepan</translation>
    </message>
    <message>
        <source>Length, along the front</source>
        <translation>Largo, a lo largo del frente</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Height of the steel line at the eave</source>
        <translation>Altura de la línea del acero en el alero</translation>
    </message>
    <message>
        <source>Slope as 4:12, or height of the ridge</source>
        <translation>Pendiente como 4:12, o altura de la cumbrera</translation>
    </message>
    <message>
        <source>Roof</source>
        <translation>Techo</translation>
    </message>
    <message>
        <source>each wall its own top</source>
        <translation>cada pared su propio borde superior</translation>
    </message>
    <message>
        <source>Gable</source>
        <translation>Dos aguas</translation>
    </message>
    <message>
        <source>Single slope</source>
        <translation>Una agua</translation>
    </message>
    <message>
        <source>Level eave</source>
        <translation>Alero a nivel</translation>
    </message>
    <message>
        <source>End walls</source>
        <translation>Paredes de los extremos</translation>
    </message>
    <message>
        <source>B and D</source>
        <translation>B y D</translation>
    </message>
    <message>
        <source>A and C</source>
        <translation>A y C</translation>
    </message>
    <message>
        <source>&amp;Length, along the front</source>
        <translation>&amp;Largo, a lo largo del frente</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Ancho</translation>
    </message>
    <message>
        <source>&amp;Eave</source>
        <translation>Al&amp;ero</translation>
    </message>
    <message>
        <source>&amp;Slope, or ridge</source>
        <translation>&amp;Pendiente o cumbrera</translation>
    </message>
    <message>
        <source>&amp;Change the building</source>
        <translation>&amp;Cambiar el edificio</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>%1 reaches beyond wall %2</source>
        <translation>%1 pasa más allá de la pared %2</translation>
    </message>
    <message>
        <source>%1 overlaps %3 on wall %2</source>
        <translation>%1 se encima con %3 en la pared %2</translation>
    </message>
    <message>
        <source>the column of %1 on wall %2 is gone</source>
        <translation>la columna de %1 en la pared %2 ya no está</translation>
    </message>
    <message>
        <source>Without a place, and kept:</source>
        <translation>Sin lugar, y conservados:</translation>
    </message>
</context>
<context>
    <name>ribwright::ConfirmPatternDialog</name>
    <message>
        <source>Confirm a pattern</source>
        <translation>Confirmar un patrón</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Patrón</translation>
    </message>
    <message>
        <source>Hold every line against the plan sheet. If one of these numbers changes later, the confirmation falls, and every batch that is drilled by it is held again.</source>
        <translation>Coteje cada línea con el plano. Si después cambia uno de estos números, la confirmación cae y todo lote que se perfora con él vuelve a quedar retenido.</translation>
    </message>
    <message>
        <source>Numbers of the pattern</source>
        <translation>Números del patrón</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Hilera</translation>
    </message>
    <message>
        <source>From the module line</source>
        <translation>Desde la línea de módulo</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>Tornillo</translation>
    </message>
    <message>
        <source>Plan sheet</source>
        <translation>Hoja del plano</translation>
    </message>
    <message>
        <source>Held against it by</source>
        <translation>Cotejado por</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>&amp;Withdraw the confirmation</source>
        <translation>&amp;Retirar la confirmación</translation>
    </message>
    <message>
        <source>&amp;Confirm</source>
        <translation>&amp;Confirmar</translation>
    </message>
    <message>
        <source>C&amp;ancel</source>
        <translation>C&amp;ancelar</translation>
    </message>
    <message>
        <source>Confirm pattern %1</source>
        <translation>Confirmar el patrón %1</translation>
    </message>
    <message>
        <source>Withdraw the confirmation of pattern %1</source>
        <translation>Retirar la confirmación del patrón %1</translation>
    </message>
    <message>
        <source>Plan sheet, name and date are needed, all three.</source>
        <translation>Hacen falta hoja del plano, nombre y fecha, los tres.</translation>
    </message>
</context>
<context>
    <name>ribwright::CostPanel</name>
    <message>
        <source>What the job costs, line by line</source>
        <translation>Lo que cuesta el trabajo, renglón por renglón</translation>
    </message>
    <message>
        <source>no wall</source>
        <translation>ninguna pared</translation>
    </message>
    <message>
        <source>wall %1</source>
        <translation>pared %1</translation>
    </message>
    <message>
        <source>By wall</source>
        <translation>Por pared</translation>
    </message>
    <message>
        <source>By kind</source>
        <translation>Por tipo</translation>
    </message>
    <message>
        <source>No prices are stated. Write the price list (menu Job), fill in its last column in a spreadsheet and read it back; or state prices with the job&apos;s particulars. Waste of sheets: %1, %2.</source>
        <translation>No hay precios indicados. Escriba la lista de precios (menú Trabajo), llene su última columna en una hoja de cálculo y léala de vuelta; o indique los precios en los datos del trabajo. Desperdicio de láminas: %1, %2.</translation>
    </message>
    <message>
        <source>Total %1. Spares %2. Waste %3; of sheets %4, %5.</source>
        <translation>Total %1. Repuestos %2. Desperdicio %3; de láminas %4, %5.</translation>
    </message>
    <message>
        <source>⚠ No price for: %1.</source>
        <translation>⚠ Sin precio: %1.</translation>
    </message>
    <message>
        <source>⚠ Cannot be reckoned at its price (no weight is stated, or the sum is too large): %1.</source>
        <translation>⚠ No se puede calcular a su precio (sin peso indicado, o la suma es demasiado grande): %1.</translation>
    </message>
    <message>
        <source>What these cost is in no total.</source>
        <translation>Lo que cuestan no está en ningún total.</translation>
    </message>
</context>
<context>
    <name>ribwright::CostRows</name>
    <message>
        <source>each</source>
        <translation>por pieza</translation>
    </message>
    <message>
        <source>a foot</source>
        <translation>por pie</translation>
    </message>
    <message>
        <source>a metre</source>
        <translation>por metro</translation>
    </message>
    <message>
        <source>a square foot</source>
        <translation>por pie cuadrado</translation>
    </message>
    <message>
        <source>a square metre</source>
        <translation>por metro cuadrado</translation>
    </message>
    <message>
        <source>a pound</source>
        <translation>por libra</translation>
    </message>
    <message>
        <source>a kilogram</source>
        <translation>por kilogramo</translation>
    </message>
    <message>
        <source>sheets</source>
        <translation>láminas</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>remate</translation>
    </message>
    <message>
        <source>cuts</source>
        <translation>cortes</translation>
    </message>
    <message>
        <source>charge</source>
        <translation>cargo</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>cannot be reckoned</source>
        <translation>no se puede calcular</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>%1 sq ft</source>
        <translation>%1 pies²</translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation>%1 m²</translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>full sheets</source>
        <translation>láminas enteras</translation>
    </message>
    <message>
        <source>ripped</source>
        <translation>reducidas</translation>
    </message>
    <message>
        <source>under a rake</source>
        <translation>bajo faldón</translation>
    </message>
    <message>
        <source>notched</source>
        <translation>con recorte</translation>
    </message>
    <message>
        <source>above openings</source>
        <translation>sobre vanos</translation>
    </message>
    <message>
        <source>below openings</source>
        <translation>bajo vanos</translation>
    </message>
    <message>
        <source>several cuts</source>
        <translation>varios cortes</translation>
    </message>
    <message>
        <source>spares</source>
        <translation>repuestos</translation>
    </message>
    <message>
        <source>charges</source>
        <translation>cargos</translation>
    </message>
    <message>
        <source>cuts that part a sheet or a stick</source>
        <translation>cortes que dividen una lámina o tira</translation>
    </message>
    <message>
        <source>translucent</source>
        <translation>translúcida</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>Spares</source>
        <translation>Repuestos</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Of it waste</source>
        <translation>De ello desperdicio</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Weight, %1</source>
        <translation>Peso, %1</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Láminas</translation>
    </message>
    <message>
        <source>Cut to</source>
        <translation>Cortar a</translation>
    </message>
    <message>
        <source>order</source>
        <translation>pedir</translation>
    </message>
    <message>
        <source>use when it comes</source>
        <translation>usar cuando llegue</translation>
    </message>
    <message>
        <source>use from site</source>
        <translation>usar de la obra</translation>
    </message>
    <message>
        <source>left over on site</source>
        <translation>sobra en obra</translation>
    </message>
    <message>
        <source>to come, not needed</source>
        <translation>por llegar, no se necesita</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Pedidas</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Recibidas</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Faltan</translation>
    </message>
    <message>
        <source>To come</source>
        <translation>Por llegar</translation>
    </message>
</context>
<context>
    <name>ribwright::DifferencePanel</name>
    <message>
        <source>What is bought otherwise, line by line</source>
        <translation>Lo que se compra distinto, renglón por renglón</translation>
    </message>
    <message>
        <source>Compare &amp;with</source>
        <translation>Comparar &amp;con</translation>
    </message>
    <message>
        <source>the job as it was saved</source>
        <translation>el trabajo como se guardó</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>pedido %1</translation>
    </message>
    <message>
        <source>another job file…</source>
        <translation>otro archivo de trabajo…</translation>
    </message>
    <message>
        <source>Compare with a job</source>
        <translation>Comparar con un trabajo</translation>
    </message>
    <message>
        <source>Jobs (*.json)</source>
        <translation>Trabajos (*.json)</translation>
    </message>
    <message>
        <source>The job was never saved.</source>
        <translation>El trabajo nunca se guardó.</translation>
    </message>
    <message>
        <source>It cannot be read: %1</source>
        <translation>No se puede leer: %1</translation>
    </message>
    <message>
        <source>Nothing is bought otherwise.</source>
        <translation>No se compra nada distinto.</translation>
    </message>
    <message>
        <source>sheets %1</source>
        <translation>láminas %1</translation>
    </message>
    <message>
        <source>their length %1</source>
        <translation>su largo %1</translation>
    </message>
    <message>
        <source>From there to the job as it is: %1.</source>
        <translation>De ahí al trabajo como está: %1.</translation>
    </message>
    <message>
        <source>What has no price (?) is not in the cost.</source>
        <translation>Lo que no tiene precio (?) no está en el costo.</translation>
    </message>
</context>
<context>
    <name>ribwright::ElevationBoard</name>
    <message>
        <source>Elevation</source>
        <translation>Elevación</translation>
    </message>
    <message>
        <source>Pages of the chosen wall. Plus and minus zoom, arrow keys move, Page Up and Page Down turn pages, 0 fits the page.</source>
        <translation>Páginas de la pared elegida. Más y menos acercan y alejan, las flechas mueven, Re Pág y Av Pág pasan las páginas, 0 ajusta la página.</translation>
    </message>
</context>
<context>
    <name>ribwright::EmptyButton</name>
    <message>
        <source>As on the first wall that has girts; else at ordinary heights, to be moved to those of the plans</source>
        <translation>Como en la primera pared que los tiene; si no, a alturas usuales, para moverlos a las de los planos</translation>
    </message>
    <message>
        <source>Begin a new job…</source>
        <translation>Empezar un trabajo nuevo…</translation>
    </message>
    <message>
        <source>Hang sheets here</source>
        <translation>Colgar láminas aquí</translation>
    </message>
    <message>
        <source>Choose a profile</source>
        <translation>Elegir un perfil</translation>
    </message>
    <message>
        <source>Add girts</source>
        <translation>Agregar largueros</translation>
    </message>
</context>
<context>
    <name>ribwright::FaultPanel</name>
    <message>
        <source>Faults</source>
        <translation>Errores</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Cerrar aviso</translation>
    </message>
</context>
<context>
    <name>ribwright::FieldForm</name>
    <message>
        <source>stated</source>
        <translation>indicado</translation>
    </message>
</context>
<context>
    <name>ribwright::FieldList</name>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Add to: %1</source>
        <translation>Agregar a: %1</translation>
    </message>
    <message>
        <source>Remove from: %1</source>
        <translation>Quitar de: %1</translation>
    </message>
    <message>
        <source>Move up in: %1</source>
        <translation>Subir en: %1</translation>
    </message>
    <message>
        <source>Move down in: %1</source>
        <translation>Bajar en: %1</translation>
    </message>
</context>
<context>
    <name>ribwright::FindingList</name>
    <message>
        <source>Columns to sort by</source>
        <translation>Columnas por las que se ordena</translation>
    </message>
</context>
<context>
    <name>ribwright::FindingPanel</name>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Grado</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>The chosen finding in full</source>
        <translation>El hallazgo elegido, completo</translation>
    </message>
    <message>
        <source>No findings.</source>
        <translation>Sin hallazgos.</translation>
    </message>
    <message>
        <source>Choose a finding to read what to do about it.</source>
        <translation>Elija un hallazgo para leer qué hacer.</translation>
    </message>
    <message>
        <source>Do: </source>
        <translation>Qué hacer: </translation>
    </message>
    <message>
        <source>Source: </source>
        <translation>Fuente: </translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Show the findings that were put aside instead</source>
        <translation>Mostrar en su lugar los hallazgos apartados</translation>
    </message>
    <message>
        <source>Put aside: %1</source>
        <translation>Apartados: %1</translation>
    </message>
</context>
<context>
    <name>ribwright::Grade</name>
    <message>
        <source>stop</source>
        <translation>detener</translation>
    </message>
    <message>
        <source>look</source>
        <translation>revisar</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
</context>
<context>
    <name>ribwright::HelpPages</name>
    <message>
        <source>digits, =</source>
        <translation>cifras, =</translation>
    </message>
    <message>
        <source>while drawing or dragging: type the length, or 4&apos; x 3&apos;; = for a place</source>
        <translation>al dibujar o arrastrar: escriba la longitud, o 4&apos; x 3&apos;; = para un lugar</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Ctrl</translation>
    </message>
    <message>
        <source>held while dragging: does not snap</source>
        <translation>pulsada al arrastrar: no se ajusta a nada</translation>
    </message>
    <message>
        <source>arrows</source>
        <translation>flechas</translation>
    </message>
    <message>
        <source>move what is chosen by 1 in or 10 mm; with Shift 1 ft or 100 mm, with Alt a mark of the tape; with nothing chosen, the view</source>
        <translation>mueven lo elegido 1 in o 10 mm; con Mayús 1 ft o 100 mm, con Alt una marca de la cinta; sin nada elegido, la vista</translation>
    </message>
    <message>
        <source>Shift and drag</source>
        <translation>Mayús y arrastrar</translation>
    </message>
    <message>
        <source>choose all openings in a frame</source>
        <translation>elige todos los vanos de un marco</translation>
    </message>
    <message>
        <source>Ctrl and click</source>
        <translation>Ctrl y clic</translation>
    </message>
    <message>
        <source>choose one more, or one less</source>
        <translation>elige uno más, o uno menos</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>the next sheet in hanging order; Ctrl+Tab leaves the board</source>
        <translation>la lámina siguiente en el orden de colocación; Ctrl+Tab sale del tablero</translation>
    </message>
    <message>
        <source>Page Up, Page Down</source>
        <translation>Re Pág, Av Pág</translation>
    </message>
    <message>
        <source>the wall before, the next wall</source>
        <translation>la pared anterior, la siguiente</translation>
    </message>
    <message>
        <source>Shift+F10</source>
        <translation>Mayús+F10</translation>
    </message>
    <message>
        <source>what can be done with what is chosen</source>
        <translation>lo que se puede hacer con lo elegido</translation>
    </message>
    <message>
        <source>+ - 0</source>
        <translation>+ - 0</translation>
    </message>
    <message>
        <source>nearer, farther, the whole wall</source>
        <translation>más cerca, más lejos, la pared entera</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>one step back</source>
        <translation>un paso atrás</translation>
    </message>
    <message>
        <source>&lt;b&gt;New job&lt;/b&gt; (Ctrl+N): type the sizes as the plans have them. Every field has something sensible in it; the picture beside shows what it makes.</source>
        <translation>&lt;b&gt;Trabajo nuevo&lt;/b&gt; (Ctrl+N): escriba las medidas como están en los planos. Cada campo trae ya algo razonable; la imagen de al lado muestra lo que resulta.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Openings&lt;/b&gt;: take the tool (W for a window, D for a walk door), drag it on the wall, or click a corner and type &lt;i&gt;4&apos; x 3&apos;&lt;/i&gt;. Right click repeats it in each bay or mirrors it to the wall across.</source>
        <translation>&lt;b&gt;Vanos&lt;/b&gt;: tome la herramienta (W para una ventana, D para una puerta peatonal), arrástrela sobre la pared, o haga clic en una esquina y escriba &lt;i&gt;4&apos; x 3&apos;&lt;/i&gt;. El clic derecho lo repite en cada entreeje o lo refleja en la pared de enfrente.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Where it is seen from&lt;/b&gt;: drag the eye in the plan; the sheets are hung so that their laps do not show from there.</source>
        <translation>&lt;b&gt;Desde dónde se ve&lt;/b&gt;: arrastre el ojo en la planta; las láminas se colocan de modo que sus solapes no se vean desde allí.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Starts compared&lt;/b&gt;, below: how each wall&apos;s first sheet can stand, and what each costs. Point to one to see it.</source>
        <translation>&lt;b&gt;Inicios comparados&lt;/b&gt;, abajo: cómo puede quedar la primera lámina de cada pared y lo que cuesta cada inicio. Señale uno para verlo.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Findings&lt;/b&gt;, at the right: what would be wrong if built as shown. Choose one to go there; where a button mends it, it stands under its words.</source>
        <translation>&lt;b&gt;Hallazgos&lt;/b&gt;, a la derecha: lo que estaría mal si se construyera como se muestra. Elija uno para ir allí; donde un botón lo remedia, está bajo sus palabras.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Pages&lt;/b&gt; shows what is printed; &lt;b&gt;Save packet&lt;/b&gt; (Ctrl+Shift+P) writes it with the order as tables.</source>
        <translation>&lt;b&gt;Páginas&lt;/b&gt; muestra lo que se imprime; &lt;b&gt;Guardar paquete&lt;/b&gt; (Ctrl+Mayús+P) lo escribe con el pedido en tablas.</translation>
    </message>
    <message>
        <source>Everything can be taken back (Ctrl+Z), and work that is not saved is kept if the program ends.</source>
        <translation>Todo se puede deshacer (Ctrl+Z), y el trabajo sin guardar se conserva si el programa termina.</translation>
    </message>
    <message>
        <source>From the plans to the wall</source>
        <translation>De los planos a la pared</translation>
    </message>
    <message>
        <source>Screws and holes stand where the plans put the steel. Nothing is drilled before the steel is measured; the plans and the local code go before what is shown here.</source>
        <translation>Los tornillos y agujeros están donde los planos ponen el acero. No se taladra nada antes de medir el acero; los planos y el código local van antes que lo que se muestra aquí.</translation>
    </message>
    <message>
        <source>On the wall: tools</source>
        <translation>En la pared: herramientas</translation>
    </message>
    <message>
        <source>On the wall: hand and keys</source>
        <translation>En la pared: mano y teclas</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
</context>
<context>
    <name>ribwright::JobDialog</name>
    <message>
        <source>Job particulars</source>
        <translation>Datos del trabajo</translation>
    </message>
    <message>
        <source>Pages of the job</source>
        <translation>Páginas del trabajo</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
</context>
<context>
    <name>ribwright::JobFiles</name>
    <message>
        <source>The job could not be saved. Nothing is lost: it is still open, with all its changes.</source>
        <translation>No se pudo guardar el trabajo. Nada se ha perdido: sigue abierto, con todos sus cambios.</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Abrir un trabajo</translation>
    </message>
    <message>
        <source>Job files (*.json);;All files (*)</source>
        <translation>Archivos de trabajo (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Read again.</source>
        <translation>Leído de nuevo.</translation>
    </message>
    <message>
        <source>%1 could not be read.</source>
        <translation>No se pudo leer %1.</translation>
    </message>
    <message>
        <source>Nothing can be written beside %1: other windows will not see that it is open here.</source>
        <translation>Junto a %1 no se puede escribir nada: otras ventanas no verán que está abierto aquí.</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Unsaved work could not be kept, which is tried again: %1</source>
        <translation>No se pudo conservar el trabajo sin guardar; se intenta de nuevo: %1</translation>
    </message>
    <message>
        <source>Unsaved work is kept again.</source>
        <translation>El trabajo sin guardar se conserva de nuevo.</translation>
    </message>
</context>
<context>
    <name>ribwright::Keeper</name>
    <message>
        <source>cannot be written to</source>
        <translation>no admite escritura</translation>
    </message>
</context>
<context>
    <name>ribwright::KeptCard</name>
    <message>
        <source>openings added: %1</source>
        <translation>vanos añadidos: %1</translation>
    </message>
    <message>
        <source>openings taken away: %1</source>
        <translation>vanos quitados: %1</translation>
    </message>
    <message>
        <source>openings changed: %1</source>
        <translation>vanos cambiados: %1</translation>
    </message>
    <message>
        <source>another name of the job</source>
        <translation>otro nombre del trabajo</translation>
    </message>
    <message>
        <source>another outline or roof</source>
        <translation>otro contorno o techo</translation>
    </message>
    <message>
        <source>walls changed: %1</source>
        <translation>paredes cambiadas: %1</translation>
    </message>
    <message>
        <source>walls added: %1</source>
        <translation>paredes añadidas: %1</translation>
    </message>
    <message>
        <source>walls taken away: %1</source>
        <translation>paredes quitadas: %1</translation>
    </message>
    <message>
        <source>other statements of the job</source>
        <translation>otros datos del trabajo</translation>
    </message>
    <message>
        <source>In the kept work: %1.</source>
        <translation>En el trabajo conservado: %1.</translation>
    </message>
    <message>
        <source>The job was never saved: no file holds anything of it.</source>
        <translation>El trabajo nunca se guardó: ningún archivo contiene nada de él.</translation>
    </message>
    <message>
        <source>The job&apos;s file is no longer there.</source>
        <translation>El archivo del trabajo ya no está.</translation>
    </message>
    <message>
        <source>The job&apos;s file cannot be read.</source>
        <translation>El archivo del trabajo no se puede leer.</translation>
    </message>
    <message>
        <source>The file has been saved or changed since the kept work was begun.</source>
        <translation>El archivo se guardó o cambió después de empezarse el trabajo conservado.</translation>
    </message>
</context>
<context>
    <name>ribwright::KeptDialog</name>
    <message>
        <source>Work that was not saved</source>
        <translation>Trabajo sin guardar</translation>
    </message>
    <message>
        <source>Kept work</source>
        <translation>Trabajo conservado</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Conservado</translation>
    </message>
    <message>
        <source>Open the &amp;kept work</source>
        <translation>Abrir lo &amp;conservado</translation>
    </message>
    <message>
        <source>Open the &amp;file, keep this for later</source>
        <translation>Abrir el &amp;archivo, dejar esto para después</translation>
    </message>
    <message>
        <source>&amp;Discard…</source>
        <translation>&amp;Descartar…</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>Des&amp;pués</translation>
    </message>
    <message>
        <source>A window went before its work was saved. The work was kept, and the jobs&apos; files are as they were. Both stay until you decide.</source>
        <translation>Una ventana desapareció antes de guardarse su trabajo. El trabajo se conservó y los archivos están como estaban. Ambos quedan hasta que usted decida.</translation>
    </message>
    <message>
        <source>File now</source>
        <translation>Archivo ahora</translation>
    </message>
    <message>
        <source>Walls</source>
        <translation>Paredes</translation>
    </message>
    <message>
        <source>Openings</source>
        <translation>Vanos</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Láminas</translation>
    </message>
    <message>
        <source>Discard this kept work? It cannot be brought back.</source>
        <translation>¿Descartar este trabajo conservado? No se puede recuperar.</translation>
    </message>
    <message>
        <source>D&amp;iscard it</source>
        <translation>Descar&amp;tarlo</translation>
    </message>
    <message>
        <source>&amp;Go on keeping it</source>
        <translation>&amp;Seguir conservándolo</translation>
    </message>
    <message>
        <source>never saved</source>
        <translation>nunca guardado</translation>
    </message>
    <message>
        <source>no name</source>
        <translation>sin nombre</translation>
    </message>
</context>
<context>
    <name>ribwright::LayPlanDialog</name>
    <message>
        <source>Lay a plan over the wall: %1</source>
        <translation>Poner un plano sobre la pared: %1</translation>
    </message>
    <message>
        <source>&amp;Picture</source>
        <translation>&amp;Imagen</translation>
    </message>
    <message>
        <source>File of the picture</source>
        <translation>Archivo de la imagen</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>&amp;Elegir…</translation>
    </message>
    <message>
        <source>Click two points on the picture whose places on the wall are known, far apart, and type where they are. Arrow keys move the chosen cross by a pixel.</source>
        <translation>Haga clic en dos puntos de la imagen, lejos uno del otro, cuyo lugar en la pared se conoce, y escriba dónde están. Las flechas mueven la cruz elegida un píxel.</translation>
    </message>
    <message>
        <source>From the left corner</source>
        <translation>Desde la esquina izquierda</translation>
    </message>
    <message>
        <source>Point %1, from the left corner</source>
        <translation>Punto %1, desde la esquina izquierda</translation>
    </message>
    <message>
        <source>From the top of concrete</source>
        <translation>Altura sobre el concreto</translation>
    </message>
    <message>
        <source>Point %1, from the top of concrete</source>
        <translation>Punto %1, desde la cara superior del concreto</translation>
    </message>
    <message>
        <source>&amp;Lay it over the wall</source>
        <translation>&amp;Ponerlo sobre la pared</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Choose a picture of the plan</source>
        <translation>Elegir una imagen del plano</translation>
    </message>
    <message>
        <source>Pictures (%1);;All files (*)</source>
        <translation>Imágenes (%1);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Point &amp;%1: %2 across, %3 down</source>
        <translation>Punto &amp;%1: %2 a la derecha, %3 abajo</translation>
    </message>
    <message>
        <source>Point &amp;%1: not on the picture yet</source>
        <translation>Punto &amp;%1: aún no está en la imagen</translation>
    </message>
    <message>
        <source>%1 pixels of the picture are %2 on the wall.</source>
        <translation>%1 píxeles de la imagen son %2 en la pared.</translation>
    </message>
    <message>
        <source>The picture is turned to the left by %1°.</source>
        <translation>La imagen se gira %1° a la izquierda.</translation>
    </message>
    <message>
        <source>The picture is turned to the right by %1°.</source>
        <translation>La imagen se gira %1° a la derecha.</translation>
    </message>
    <message>
        <source>The picture is not turned.</source>
        <translation>La imagen no se gira.</translation>
    </message>
    <message>
        <source>Choose a picture that can be read.</source>
        <translation>Elija una imagen que se pueda leer.</translation>
    </message>
    <message>
        <source>Click point %1 on the picture.</source>
        <translation>Haga clic en el punto %1 de la imagen.</translation>
    </message>
    <message>
        <source>A length cannot be read.</source>
        <translation>Una medida no se puede leer.</translation>
    </message>
    <message>
        <source>Type where point %1 is on the wall.</source>
        <translation>Escriba dónde está el punto %1 en la pared.</translation>
    </message>
</context>
<context>
    <name>ribwright::LengthChart</name>
    <message>
        <source>Steel bought against the number of lengths. Click, or use the arrow keys, to choose how many.</source>
        <translation>Acero comprado según el número de largos. Haga clic, o use las flechas, para elegir cuántos.</translation>
    </message>
    <message>
        <source>Number of lengths %1: %2</source>
        <translation>Número de largos %1: %2</translation>
    </message>
    <message>
        <source>No sheets of this kind are made to length.</source>
        <translation>Ninguna lámina de este tipo se fabrica a medida.</translation>
    </message>
    <message>
        <source>one length %1</source>
        <translation>un largo %1</translation>
    </message>
    <message>
        <source>least %1</source>
        <translation>mínimo %1</translation>
    </message>
    <message>
        <source>number of lengths</source>
        <translation>número de largos</translation>
    </message>
</context>
<context>
    <name>ribwright::LockBar</name>
    <message>
        <source>Go on here</source>
        <translation>Seguir aquí</translation>
    </message>
    <message>
        <source>That window is gone</source>
        <translation>Esa ventana ya no existe</translation>
    </message>
    <message>
        <source>another window</source>
        <translation>otra ventana</translation>
    </message>
    <message>
        <source>another window on %1</source>
        <translation>otra ventana en %1</translation>
    </message>
    <message>
        <source>%1 is open in %2 since %3. Here it is open to look at: it can be changed, and saved under another name.</source>
        <translation>%1 está abierto en %2 desde %3. Aquí está abierto para mirarlo: se puede cambiar y guardar con otro nombre.</translation>
    </message>
    <message>
        <source>The other window has closed %1. It can be saved from here now.</source>
        <translation>La otra ventana cerró %1. Ahora se puede guardar desde aquí.</translation>
    </message>
</context>
<context>
    <name>ribwright::MainWindow</name>
    <message>
        <source>Folder for the packet</source>
        <translation>Carpeta para el paquete</translation>
    </message>
    <message>
        <source>The packet could not be written; nothing in the folder was changed.</source>
        <translation>No se pudo escribir el paquete; nada cambió en la carpeta.</translation>
    </message>
    <message>
        <source>The packet was stopped; nothing in the folder was changed.</source>
        <translation>El paquete se detuvo; nada cambió en la carpeta.</translation>
    </message>
    <message>
        <source>Packet written into %1: %2 files.</source>
        <translation>Paquete escrito en %1: %2 archivos.</translation>
    </message>
    <message>
        <source>Ribwright</source>
        <translation>Ribwright</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>What was open before is still shown.</source>
        <translation>Se sigue mostrando lo que estaba abierto.</translation>
    </message>
    <message>
        <source>The file could not be read.</source>
        <translation>No se pudo leer el archivo.</translation>
    </message>
    <message>
        <source>Close the window</source>
        <translation>Cerrar la ventana</translation>
    </message>
    <message>
        <source>A packet is being made. Stop it? Nothing in its folder has been changed.</source>
        <translation>Se está haciendo un paquete. ¿Detenerlo? Nada ha cambiado en su carpeta.</translation>
    </message>
    <message>
        <source>&amp;Stop and close</source>
        <translation>&amp;Detener y cerrar</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <translation>&amp;Seguir</translation>
    </message>
    <message>
        <source>%1 (%2)[*], Ribwright</source>
        <translation>%1 (%2)[*], Ribwright</translation>
    </message>
    <message>
        <source>in no file yet</source>
        <translation>todavía en ningún archivo</translation>
    </message>
    <message>
        <source>Quick start</source>
        <translation>Inicio rápido</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>%1, to look at</source>
        <translation>%1, para mirar</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
</context>
<context>
    <name>ribwright::MarkedPicture</name>
    <message>
        <source>Picture of the plan</source>
        <translation>Imagen del plano</translation>
    </message>
    <message>
        <source>Click to set the chosen cross. Arrow keys move it by a pixel, with Shift by ten; 1 and 2 choose a cross; plus and minus zoom, arrow keys with Ctrl move the picture, 0 shows all of it.</source>
        <translation>Un clic pone la cruz elegida. Las flechas la mueven un píxel, con Mayús diez; 1 y 2 eligen una cruz; más y menos acercan y alejan, las flechas con Ctrl mueven la imagen, 0 la muestra entera.</translation>
    </message>
    <message>
        <source>Choose a picture of the wall as the plans have it.</source>
        <translation>Elija una imagen de la pared según los planos.</translation>
    </message>
</context>
<context>
    <name>ribwright::NewJobDialog</name>
    <message>
        <source>New job</source>
        <translation>Trabajo nuevo</translation>
    </message>
    <message>
        <source>The defaults that were kept cannot be read; these are the shipped ones.</source>
        <translation>Los valores iniciales guardados no se pueden leer; estos son los del programa.</translation>
    </message>
    <message>
        <source>&amp;From a sample…</source>
        <translation>&amp;De un ejemplo…</translation>
    </message>
    <message>
        <source>&amp;Keep these as the defaults</source>
        <translation>&amp;Guardar estos como valores iniciales</translation>
    </message>
    <message>
        <source>&amp;Make the job</source>
        <translation>&amp;Hacer el trabajo</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>This building is too large to be drawn while it is typed; it can be made all the same.</source>
        <translation>Este edificio es demasiado grande para dibujarlo mientras se escribe; de todos modos se puede hacer.</translation>
    </message>
    <message>
        <source>The job cannot be made yet:</source>
        <translation>El trabajo todavía no se puede hacer:</translation>
    </message>
    <message>
        <source>Kept: new jobs begin with these.</source>
        <translation>Guardados: los trabajos nuevos empiezan con estos.</translation>
    </message>
    <message>
        <source>The defaults could not be kept.</source>
        <translation>No se pudieron guardar los valores iniciales.</translation>
    </message>
</context>
<context>
    <name>ribwright::NewJobForm</name>
    <message>
        <source>Name of the job</source>
        <translation>Nombre del trabajo</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Número del trabajo</translation>
    </message>
    <message>
        <source>&amp;Job</source>
        <translation>&amp;Trabajo</translation>
    </message>
    <message>
        <source>N&amp;umber</source>
        <translation>N&amp;úmero</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Pies y pulgadas</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Milímetros</translation>
    </message>
    <message>
        <source>Millimetres, decimal comma</source>
        <translation>Milímetros, coma decimal</translation>
    </message>
    <message>
        <source>What is built</source>
        <translation>Qué se construye</translation>
    </message>
    <message>
        <source>Building, four walls</source>
        <translation>Un edificio</translation>
    </message>
    <message>
        <source>One free wall</source>
        <translation>Una pared suelta</translation>
    </message>
    <message>
        <source>Built is</source>
        <translation>Se construye</translation>
    </message>
    <message>
        <source>Length, along the front</source>
        <translation>Largo, a lo largo del frente</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>&amp;Length, along the front</source>
        <translation>&amp;Largo, en el frente</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Ancho</translation>
    </message>
    <message>
        <source>Roof</source>
        <translation>Techo</translation>
    </message>
    <message>
        <source>Gable</source>
        <translation>Dos aguas</translation>
    </message>
    <message>
        <source>Single slope</source>
        <translation>Una agua</translation>
    </message>
    <message>
        <source>Level eave</source>
        <translation>Alero a nivel</translation>
    </message>
    <message>
        <source>End walls</source>
        <translation>Extremos</translation>
    </message>
    <message>
        <source>B and D</source>
        <translation>B y D</translation>
    </message>
    <message>
        <source>A and C</source>
        <translation>A y C</translation>
    </message>
    <message>
        <source>Height of the steel line at the eave</source>
        <translation>Altura de la línea del acero en el alero</translation>
    </message>
    <message>
        <source>Slope as 4:12, or height of the ridge</source>
        <translation>Pendiente como 4:12, o altura de la cumbrera</translation>
    </message>
    <message>
        <source>&amp;Eave</source>
        <translation>Al&amp;ero</translation>
    </message>
    <message>
        <source>&amp;Slope, or ridge</source>
        <translation>&amp;Pendiente o cumbrera</translation>
    </message>
    <message>
        <source>Bays of the side walls</source>
        <translation>Entreejes de las paredes laterales</translation>
    </message>
    <message>
        <source>Bays of the end walls</source>
        <translation>Entreejes de las paredes de los extremos</translation>
    </message>
    <message>
        <source>&amp;Bays of the sides</source>
        <translation>E&amp;ntreejes de los lados</translation>
    </message>
    <message>
        <source>of the ends</source>
        <translation>de los extremos</translation>
    </message>
    <message>
        <source>Heights of the side walls&apos; girts from the top of concrete</source>
        <translation>Alturas de los largueros de los lados desde el concreto</translation>
    </message>
    <message>
        <source>Heights of the end walls&apos; girts from the top of concrete</source>
        <translation>Alturas de los largueros de los extremos desde el concreto</translation>
    </message>
    <message>
        <source>&amp;Girts of the sides</source>
        <translation>Lar&amp;gueros de los lados</translation>
    </message>
    <message>
        <source>Cross-section of the girts</source>
        <translation>Sección de los largueros</translation>
    </message>
    <message>
        <source>What a girt&apos;s height is the height of</source>
        <translation>De qué es la altura de un larguero</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>centro</translation>
    </message>
    <message>
        <source>web line</source>
        <translation>línea del alma</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>borde inferior</translation>
    </message>
    <message>
        <source>top</source>
        <translation>borde superior</translation>
    </message>
    <message>
        <source>Girts are</source>
        <translation>Los largueros son</translation>
    </message>
    <message>
        <source>heights to their</source>
        <translation>alturas a su</translation>
    </message>
    <message>
        <source>Girts and columns</source>
        <translation>Largueros y columnas</translation>
    </message>
    <message>
        <source>bypass</source>
        <translation>por fuera</translation>
    </message>
    <message>
        <source>flush</source>
        <translation>al ras</translation>
    </message>
    <message>
        <source>Girts pass columns</source>
        <translation>Pasan las columnas</translation>
    </message>
    <message>
        <source>How sheets end at the bottom</source>
        <translation>Cómo terminan abajo las láminas</translation>
    </message>
    <message>
        <source>below concrete</source>
        <translation>bajo el concreto</translation>
    </message>
    <message>
        <source>in a notch</source>
        <translation>en una muesca</translation>
    </message>
    <message>
        <source>on base trim</source>
        <translation>sobre remate de base</translation>
    </message>
    <message>
        <source>on a wall</source>
        <translation>sobre un muro</translation>
    </message>
    <message>
        <source>Drop, depth or height of the base</source>
        <translation>Caída, fondo o altura de la base</translation>
    </message>
    <message>
        <source>Sheets end</source>
        <translation>Terminan</translation>
    </message>
    <message>
        <source>b&amp;y</source>
        <translation>&amp;por</translation>
    </message>
    <message>
        <source>Profile of the sheets</source>
        <translation>Perfil de las láminas</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Láminas</translation>
    </message>
    <message>
        <source>Pattern of the screws</source>
        <translation>Patrón de los tornillos</translation>
    </message>
    <message>
        <source>Screws</source>
        <translation>Tornillos</translation>
    </message>
    <message>
        <source>Colour as ordered</source>
        <translation>Color pedido</translation>
    </message>
    <message>
        <source>Prevailing wind blows from</source>
        <translation>El viento dominante sopla desde</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>no indicado</translation>
    </message>
    <message>
        <source>north</source>
        <translation>norte</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>noreste</translation>
    </message>
    <message>
        <source>east</source>
        <translation>este</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>sureste</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>suroeste</translation>
    </message>
    <message>
        <source>west</source>
        <translation>oeste</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>noroeste</translation>
    </message>
    <message>
        <source>&amp;Colour</source>
        <translation>&amp;Color</translation>
    </message>
    <message>
        <source>Wind from</source>
        <translation>Viento del</translation>
    </message>
    <message>
        <source>Where people pass by</source>
        <translation>Por dónde pasa la gente</translation>
    </message>
    <message>
        <source>nowhere</source>
        <translation>por ningún lado</translation>
    </message>
    <message>
        <source>before wall A</source>
        <translation>ante la pared A</translation>
    </message>
    <message>
        <source>before wall B</source>
        <translation>ante la pared B</translation>
    </message>
    <message>
        <source>before wall C</source>
        <translation>ante la pared C</translation>
    </message>
    <message>
        <source>before wall D</source>
        <translation>ante la pared D</translation>
    </message>
    <message>
        <source>How far away people pass by</source>
        <translation>A qué distancia pasa la gente</translation>
    </message>
    <message>
        <source>Road</source>
        <translation>Camino</translation>
    </message>
    <message>
        <source>&amp;at a distance of</source>
        <translation>a &amp;distancia de</translation>
    </message>
    <message>
        <source>none chosen yet</source>
        <translation>ninguno elegido todavía</translation>
    </message>
    <message>
        <source>none stated yet</source>
        <translation>ninguno indicado todavía</translation>
    </message>
    <message>
        <source>%1, example</source>
        <translation>%1, ejemplo</translation>
    </message>
    <message>
        <source>&amp;Slope, or high side</source>
        <translation>&amp;Pendiente o lado alto</translation>
    </message>
    <message>
        <source>at h&amp;eight</source>
        <translation>a alt&amp;ura</translation>
    </message>
</context>
<context>
    <name>ribwright::NewJobPicture</name>
    <message>
        <source>Picture of the new job</source>
        <translation>Imagen del trabajo nuevo</translation>
    </message>
    <message>
        <source>The picture shows what could be read last; something typed at the left cannot be read.</source>
        <translation>La imagen muestra lo último que se pudo leer; algo escrito a la izquierda no se puede leer.</translation>
    </message>
    <message>
        <source>Sheets: %1, different lengths: %2; to stop for: %3, to look at: %4</source>
        <translation>Láminas: %1, largos distintos: %2; para detenerse: %3, para mirar: %4</translation>
    </message>
</context>
<context>
    <name>ribwright::OpeningFile</name>
    <message>
        <source>added %1 (%2)</source>
        <translation>agregados %1 (%2)</translation>
    </message>
    <message>
        <source>changed %1 (%2)</source>
        <translation>cambiados %1 (%2)</translation>
    </message>
    <message>
        <source>as they were: %1</source>
        <translation>como estaban: %1</translation>
    </message>
    <message>
        <source>it names no opening</source>
        <translation>no nombra ningún vano</translation>
    </message>
    <message>
        <source>Opening schedule read: %1. None was removed.</source>
        <translation>Cuadro de vanos leído: %1. No se quitó ninguno.</translation>
    </message>
    <message>
        <source>The opening schedule could not be read; nothing was changed.</source>
        <translation>No se pudo leer el cuadro de vanos; no se cambió nada.</translation>
    </message>
    <message>
        <source>is too large to be an opening schedule</source>
        <translation>es demasiado grande para ser un cuadro de vanos</translation>
    </message>
    <message>
        <source>Read an opening schedule</source>
        <translation>Leer un cuadro de vanos</translation>
    </message>
    <message>
        <source>Opening schedule written into %1.</source>
        <translation>Cuadro de vanos escrito en %1.</translation>
    </message>
    <message>
        <source>The opening schedule could not be written.</source>
        <translation>No se pudo escribir el cuadro de vanos.</translation>
    </message>
    <message>
        <source>Tables (*.csv);;All files (*)</source>
        <translation>Tablas (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Write the opening schedule</source>
        <translation>Escribir el cuadro de vanos</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
</context>
<context>
    <name>ribwright::OrderPanel</name>
    <message>
        <source>Lines of the order</source>
        <translation>Renglones del pedido</translation>
    </message>
    <message>
        <source>Bundles</source>
        <translation>Atados</translation>
    </message>
    <message>
        <source>Sheets whose lengths are chosen</source>
        <translation>Láminas cuyos largos se eligen</translation>
    </message>
    <message>
        <source>Steel bought against the number of lengths</source>
        <translation>Acero comprado según el número de largos</translation>
    </message>
    <message>
        <source>Use and waste of the steel bought</source>
        <translation>Uso y desperdicio del acero comprado</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Renglones</translation>
    </message>
    <message>
        <source>waste %1, %2 %</source>
        <translation>desperdicio %1, %2 %</translation>
    </message>
    <message>
        <source>Any number of lengths: each sheet as long as it is wanted, in %1 different ones.</source>
        <translation>Cualquier número de largos: cada lámina tan larga como hace falta, en %1 distintos.</translation>
    </message>
    <message>
        <source>At most %1: %2. Buys %3, that is %4 more than the least.</source>
        <translation>A lo sumo %1: %2. Compra %3, es decir %4 más que el mínimo.</translation>
    </message>
</context>
<context>
    <name>ribwright::OrderRows</name>
    <message>
        <source>translucent</source>
        <translation>translúcida</translation>
    </message>
    <message>
        <source> sq ft</source>
        <translation> pie²</translation>
    </message>
    <message>
        <source> m²</source>
        <translation> m²</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Renglón</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Repuesto</translation>
    </message>
    <message>
        <source>Area, sq ft</source>
        <translation>Área, pie²</translation>
    </message>
    <message>
        <source>Area, m²</source>
        <translation>Área, m²</translation>
    </message>
    <message>
        <source>Weight, lb</source>
        <translation>Peso, lb</translation>
    </message>
    <message>
        <source>Weight, kg</source>
        <translation>Peso, kg</translation>
    </message>
    <message>
        <source>Waste, sq ft</source>
        <translation>Desperdicio, pie²</translation>
    </message>
    <message>
        <source>Waste, m²</source>
        <translation>Desperdicio, m²</translation>
    </message>
    <message>
        <source>Sheets to be hung</source>
        <translation>Láminas por colgar</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Lámina</translation>
    </message>
    <message>
        <source>Bundle</source>
        <translation>Atado</translation>
    </message>
    <message>
        <source>Set down from</source>
        <translation>Dejar desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Láminas</translation>
    </message>
    <message>
        <source>Longest</source>
        <translation>Más larga</translation>
    </message>
    <message>
        <source>From the top</source>
        <translation>Desde arriba</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>repuesto</translation>
    </message>
</context>
<context>
    <name>ribwright::PacketBar</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Packet being made</source>
        <translation>Paquete en marcha</translation>
    </message>
    <message>
        <source>Stop the packet</source>
        <translation>Detener el paquete</translation>
    </message>
</context>
<context>
    <name>ribwright::PaperSize</name>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Tabloid</source>
        <translation>Tabloide</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>A3</source>
        <translation>A3</translation>
    </message>
</context>
<context>
    <name>ribwright::PartClipboard</name>
    <message>
        <source>Nothing is chosen. Choose openings, penetrations or girts first.</source>
        <translation>No hay nada elegido. Elija antes vanos, pasos o largueros.</translation>
    </message>
    <message>
        <source>Copied: %1</source>
        <translation>Copiado: %1</translation>
    </message>
    <message>
        <source>The clipboard holds no parts of a wall.</source>
        <translation>El portapapeles no contiene partes de una pared.</translation>
    </message>
</context>
<context>
    <name>ribwright::PartMenu</name>
    <message>
        <source>&amp;Copy beside</source>
        <translation>&amp;Copiar al lado</translation>
    </message>
    <message>
        <source>One in &amp;each bay</source>
        <translation>Uno &amp;en cada entreeje</translation>
    </message>
    <message>
        <source>&amp;Mirror to wall %1</source>
        <translation>&amp;Reflejar en la pared %1</translation>
    </message>
    <message>
        <source>&amp;Repeat along bays…</source>
        <translation>Re&amp;petir a lo largo de los entreejes…</translation>
    </message>
    <message>
        <source>Start with a seam at its &amp;left jamb</source>
        <translation>Empezar con una unión en su jamba &amp;izquierda</translation>
    </message>
    <message>
        <source>Start with a seam at its ri&amp;ght jamb</source>
        <translation>Empezar con una unión en su jamba &amp;derecha</translation>
    </message>
    <message>
        <source>&amp;Split here</source>
        <translation>&amp;Dividir aquí</translation>
    </message>
    <message>
        <source>Keep the &amp;left part</source>
        <translation>Conservar la parte &amp;izquierda</translation>
    </message>
    <message>
        <source>Keep the ri&amp;ght part</source>
        <translation>Conservar la parte derec&amp;ha</translation>
    </message>
    <message>
        <source>Split r&amp;ound</source>
        <translation>Dividir &amp;alrededor de</translation>
    </message>
    <message>
        <source>&amp;Run through</source>
        <translation>Hacer &amp;continuo</translation>
    </message>
    <message>
        <source>&amp;Delete, openings stay where they are</source>
        <translation>&amp;Eliminar; los vanos se quedan donde están</translation>
    </message>
    <message>
        <source>Delete, &amp;openings keep their distance</source>
        <translation>Eliminar; los &amp;vanos conservan su distancia</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>Eli&amp;minar</translation>
    </message>
    <message>
        <source>&amp;Add here</source>
        <translation>A&amp;gregar aquí</translation>
    </message>
    <message>
        <source>&amp;Girt</source>
        <translation>&amp;Larguero</translation>
    </message>
    <message>
        <source>&amp;Column</source>
        <translation>&amp;Columna</translation>
    </message>
    <message>
        <source>&amp;Expansion joint</source>
        <translation>&amp;Junta de dilatación</translation>
    </message>
    <message>
        <source>&amp;Band of other sheets</source>
        <translation>&amp;Franja de otras láminas</translation>
    </message>
    <message>
        <source>&amp;Step of the concrete</source>
        <translation>&amp;Escalón del concreto</translation>
    </message>
    <message>
        <source>&amp;Point of the top</source>
        <translation>&amp;Punto de la parte superior</translation>
    </message>
    <message>
        <source>&amp;Hang the sheets</source>
        <translation>C&amp;olocar las láminas</translation>
    </message>
    <message>
        <source>&amp;By rule: laps away from the sight point</source>
        <translation>&amp;Por regla: solapes lejos del punto de vista</translation>
    </message>
    <message>
        <source>&amp;Left to right</source>
        <translation>De &amp;izquierda a derecha</translation>
    </message>
    <message>
        <source>&amp;Right to left</source>
        <translation>De &amp;derecha a izquierda</translation>
    </message>
</context>
<context>
    <name>ribwright::PartRows</name>
    <message>
        <source>rip</source>
        <translation>reducida</translation>
    </message>
    <message>
        <source>rake</source>
        <translation>hastial</translation>
    </message>
    <message>
        <source>notched</source>
        <translation>con recorte</translation>
    </message>
    <message>
        <source>above an opening</source>
        <translation>sobre un vano</translation>
    </message>
    <message>
        <source>below an opening</source>
        <translation>bajo un vano</translation>
    </message>
    <message>
        <source>full</source>
        <translation>entera</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>Largo bruto</translation>
    </message>
    <message>
        <source>Order code</source>
        <translation>Código de pedido</translation>
    </message>
    <message>
        <source>Girts behind</source>
        <translation>Largueros detrás</translation>
    </message>
    <message>
        <source>By the last edit</source>
        <translation>Con el último cambio</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiada</translation>
    </message>
</context>
<context>
    <name>ribwright::PartTable</name>
    <message>
        <source>Columns to sort by</source>
        <translation>Columnas por las que se ordena</translation>
    </message>
</context>
<context>
    <name>ribwright::ParticularsPanel</name>
    <message>
        <source>Particulars of what is chosen</source>
        <translation>Detalles de lo elegido</translation>
    </message>
</context>
<context>
    <name>ribwright::Pattern</name>
    <message>
        <source>corner zone</source>
        <translation>zona de esquina</translation>
    </message>
    <message>
        <source>field</source>
        <translation>zona central</translation>
    </message>
    <message>
        <source>the plans&apos; own</source>
        <translation>los de los planos</translation>
    </message>
    <message>
        <source>New Zealand code</source>
        <translation>código de Nueva Zelanda</translation>
    </message>
    <message>
        <source>jambs %1</source>
        <translation>jambas %1</translation>
    </message>
    <message>
        <source>side laps, from screw to screw</source>
        <translation>solapes laterales, de tornillo a tornillo</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>holes in laps</source>
        <translation>agujeros en los solapes</translation>
    </message>
    <message>
        <source>both sheets</source>
        <translation>ambas láminas</translation>
    </message>
    <message>
        <source>upper sheet only</source>
        <translation>solo la lámina de encima</translation>
    </message>
    <message>
        <source>limits of spacing</source>
        <translation>límites de separación</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>perfil</translation>
    </message>
    <message>
        <source>Not confirmed.</source>
        <translation>Sin confirmar.</translation>
    </message>
    <message>
        <source>plan sheet %1, %2, %3</source>
        <translation>hoja %1, %2, %3</translation>
    </message>
    <message>
        <source>Confirmed: %1.</source>
        <translation>Confirmado: %1.</translation>
    </message>
    <message>
        <source>Its confirmation has fallen, its numbers have changed since: %1.</source>
        <translation>Su confirmación cayó, sus números cambiaron desde entonces: %1.</translation>
    </message>
    <message>
        <source>not among the job&apos;s screws</source>
        <translation>no está entre los tornillos del trabajo</translation>
    </message>
    <message>
        <source>diameter %1, washer %2, length %3, pilot %4</source>
        <translation>diámetro %1, arandela %2, largo %3, agujero guía %4</translation>
    </message>
    <message>
        <source>no place across the sheet</source>
        <translation>ningún lugar a lo ancho de la lámina</translation>
    </message>
    <message>
        <source>screw %1</source>
        <translation>tornillo %1</translation>
    </message>
</context>
<context>
    <name>ribwright::PerimeterStrip</name>
    <message>
        <source>Walls in walking order</source>
        <translation>Paredes en orden de recorrido</translation>
    </message>
</context>
<context>
    <name>ribwright::PlacedDialogs</name>
    <message>
        <source>Place this order</source>
        <translation>Hacer este pedido</translation>
    </message>
    <message>
        <source>Order &amp;number</source>
        <translation>&amp;Número de pedido</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Fecha</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Pedir</translation>
    </message>
    <message>
        <source>Sheets that came</source>
        <translation>Láminas que llegaron</translation>
    </message>
    <message>
        <source>Of %1 sheets ordered:</source>
        <translation>De %1 láminas pedidas:</translation>
    </message>
    <message>
        <source>&amp;Came fit to hang</source>
        <translation>&amp;Llegaron en buen estado</translation>
    </message>
    <message>
        <source>Came unfit, or will &amp;not come</source>
        <translation>Llegaron inservibles, o &amp;no llegarán</translation>
    </message>
    <message>
        <source>&amp;Enter</source>
        <translation>&amp;Anotar</translation>
    </message>
</context>
<context>
    <name>ribwright::PlacedPanel</name>
    <message>
        <source>What is to be ordered, used and left over</source>
        <translation>Lo que hay que pedir, usar y lo que sobra</translation>
    </message>
    <message>
        <source>Orders placed, received and short</source>
        <translation>Pedidos hechos, recibidos y en falta</translation>
    </message>
    <message>
        <source>Place this &amp;order…</source>
        <translation>Hacer este &amp;pedido…</translation>
    </message>
    <message>
        <source>What is to be ordered now is ordered</source>
        <translation>Se pide lo que falta por pedir</translation>
    </message>
    <message>
        <source>&amp;All of it came</source>
        <translation>&amp;Llegó todo</translation>
    </message>
    <message>
        <source>All of the chosen order that is not short</source>
        <translation>Todo el pedido elegido que no está en falta</translation>
    </message>
    <message>
        <source>Came or short…</source>
        <translation>Llegó o falta…</translation>
    </message>
    <message>
        <source>How many of the chosen sheets came, and how many are short</source>
        <translation>Cuántas de las láminas elegidas llegaron y cuántas faltan</translation>
    </message>
    <message>
        <source>&amp;Never placed</source>
        <translation>&amp;Nunca se pidió</translation>
    </message>
    <message>
        <source>Strike the chosen order with all that came of it</source>
        <translation>Quitar el pedido elegido con todo lo que llegó de él</translation>
    </message>
    <message>
        <source>No order was placed yet. Sheets to order: %1.</source>
        <translation>Aún no se hizo ningún pedido. Láminas por pedir: %1.</translation>
    </message>
    <message>
        <source>Sheets to order now: %1; still to come: %2; ordered and not needed: %3.</source>
        <translation>Láminas por pedir ahora: %1; por llegar: %2; pedidas y no necesarias: %3.</translation>
    </message>
    <message>
        <source>Place order %1</source>
        <translation>Hacer el pedido %1</translation>
    </message>
    <message>
        <source>Receive order %1</source>
        <translation>Recibir el pedido %1</translation>
    </message>
    <message>
        <source>Receive sheets of order %1</source>
        <translation>Recibir láminas del pedido %1</translation>
    </message>
    <message>
        <source>Strike order %1</source>
        <translation>Quitar el pedido %1</translation>
    </message>
</context>
<context>
    <name>ribwright::PlanInset</name>
    <message>
        <source>Plan of the building</source>
        <translation>Planta del edificio</translation>
    </message>
    <message>
        <source>The arrow keys go from wall to wall.</source>
        <translation>Las flechas van de pared en pared.</translation>
    </message>
    <message>
        <source>N</source>
        <comment>north</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>Sight point: %1, farther away. Drag it: the laps turn away from it.</source>
        <translation>Punto de vista: %1, más lejos. Arrástrelo: los solapes se alejan de él.</translation>
    </message>
    <message>
        <source>Sight point: %1. Drag it: the laps turn away from it.</source>
        <translation>Punto de vista: %1. Arrástrelo: los solapes se alejan de él.</translation>
    </message>
    <message>
        <source>&amp;Add a sight point here</source>
        <translation>&amp;Agregar aquí un punto de vista</translation>
    </message>
    <message>
        <source>&amp;Delete the sight point</source>
        <translation>&amp;Eliminar el punto de vista</translation>
    </message>
    <message>
        <source>sight point</source>
        <translation>punto de vista</translation>
    </message>
</context>
<context>
    <name>ribwright::PlanLaying</name>
    <message>
        <source>Lay a pl&amp;an over the wall…</source>
        <translation>Poner un pl&amp;ano sobre la pared…</translation>
    </message>
    <message>
        <source>A photograph or scan of the plans under the wall&apos;s lines, to be traced</source>
        <translation>Una foto o un escaneo de los planos bajo las líneas de la pared, para calcar</translation>
    </message>
    <message>
        <source>The picture that lies over this wall</source>
        <translation>La imagen que está sobre esta pared</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Ta&amp;ke the plan away</source>
        <translation>&amp;Quitar el plano</translation>
    </message>
    <message>
        <source>The picture&apos;s file stays where it is</source>
        <translation>El archivo de la imagen se queda donde está</translation>
    </message>
    <message>
        <source>The plan over this wall is not shown. %1</source>
        <translation>El plano sobre esta pared no se muestra. %1</translation>
    </message>
    <message>
        <source>Densit&amp;y of the plan</source>
        <translation>Intensi&amp;dad del plano</translation>
    </message>
    <message>
        <source>Plan in &amp;view</source>
        <translation>Plano a la &amp;vista</translation>
    </message>
</context>
<context>
    <name>ribwright::PriceFile</name>
    <message>
        <source>added %1 (%2)</source>
        <translation>agregados %1 (%2)</translation>
    </message>
    <message>
        <source>changed %1 (%2)</source>
        <translation>cambiados %1 (%2)</translation>
    </message>
    <message>
        <source>struck %1 (%2)</source>
        <translation>quitados %1 (%2)</translation>
    </message>
    <message>
        <source>as they were: %1</source>
        <translation>como estaban: %1</translation>
    </message>
    <message>
        <source>still without a price: %1</source>
        <translation>aún sin precio: %1</translation>
    </message>
    <message>
        <source>it names nothing</source>
        <translation>no nombra nada</translation>
    </message>
    <message>
        <source>Price list read: %1.</source>
        <translation>Lista de precios leída: %1.</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>The price list could not be read; nothing was changed.</source>
        <translation>No se pudo leer la lista de precios; no se cambió nada.</translation>
    </message>
    <message>
        <source>is too large to be a price list</source>
        <translation>es demasiado grande para ser una lista de precios</translation>
    </message>
    <message>
        <source>Read a price list</source>
        <translation>Leer una lista de precios</translation>
    </message>
    <message>
        <source>Price list written into %1.</source>
        <translation>Lista de precios escrita en %1.</translation>
    </message>
    <message>
        <source>The price list could not be written.</source>
        <translation>No se pudo escribir la lista de precios.</translation>
    </message>
    <message>
        <source>Cost of the job written into %1.</source>
        <translation>Costo del trabajo escrito en %1.</translation>
    </message>
    <message>
        <source>The cost of the job could not be written.</source>
        <translation>No se pudo escribir el costo del trabajo.</translation>
    </message>
    <message>
        <source>Tables (*.csv);;All files (*)</source>
        <translation>Tablas (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Write the price list</source>
        <translation>Escribir la lista de precios</translation>
    </message>
    <message>
        <source>Write the cost of the job</source>
        <translation>Escribir el costo del trabajo</translation>
    </message>
</context>
<context>
    <name>ribwright::PrintJob</name>
    <message>
        <source>There is no page in the range that was asked for.</source>
        <translation>No hay ninguna página en el intervalo pedido.</translation>
    </message>
    <message>
        <source>The printer has no paper of the size %1, and a page on another paper would measure wrong. Choose another paper in the menu View, or another printer.</source>
        <translation>La impresora no tiene papel de tamaño %1, y una página en otro papel mediría mal. Elija otro papel en el menú Ver, u otra impresora.</translation>
    </message>
    <message>
        <source>The printer could not be printed on. Is it switched on and connected?</source>
        <translation>No se pudo imprimir. ¿Está la impresora encendida y conectada?</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
</context>
<context>
    <name>ribwright::ReadPicture</name>
    <message>
        <source>is %1 x %2 pixels; at most %3 million pixels and %4 a side can be laid: save it smaller, or only the part with this wall</source>
        <translation>tiene %1 x %2 píxeles; caben a lo más %3 millones de píxeles y %4 por lado: guárdela más pequeña, o solo la parte con esta pared</translation>
    </message>
    <message>
        <source>is no picture that can be read; save it as PNG or JPEG</source>
        <translation>no es una imagen que se pueda leer; guárdela como PNG o JPEG</translation>
    </message>
    <message>
        <source>cannot be read whole: %1</source>
        <translation>no se puede leer entera: %1</translation>
    </message>
</context>
<context>
    <name>ribwright::RecentMenu</name>
    <message>
        <source>%1 (not there)</source>
        <translation>%1 (no está)</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>todavía ninguno</translation>
    </message>
    <message>
        <source>&amp;Remove those that are not there</source>
        <translation>&amp;Quitar los que no están</translation>
    </message>
</context>
<context>
    <name>ribwright::ReloadBar</name>
    <message>
        <source>Read it again</source>
        <translation>Leerlo de nuevo</translation>
    </message>
    <message>
        <source>Keep what is shown</source>
        <translation>Conservar lo que se muestra</translation>
    </message>
    <message>
        <source>%1 has changed on the disk.</source>
        <translation>%1 cambió en el disco.</translation>
    </message>
</context>
<context>
    <name>ribwright::RemedyBar</name>
    <message>
        <source>other findings that go: %1</source>
        <translation>otros hallazgos que se van: %1</translation>
    </message>
    <message>
        <source>that come: %1</source>
        <translation>que llegan: %1</translation>
    </message>
    <message>
        <source>Hold the numbers against the plans…</source>
        <translation>Cotejar los números con los planos…</translation>
    </message>
</context>
<context>
    <name>ribwright::SaveJob</name>
    <message>
        <source>Save the job as</source>
        <translation>Guardar el trabajo como</translation>
    </message>
    <message>
        <source>Job files (*.json);;All files (*)</source>
        <translation>Archivos de trabajo (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Save the job</source>
        <translation>Guardar el trabajo</translation>
    </message>
    <message>
        <source>%1 has been changed on the disk since it was read or saved here. It was not overwritten.</source>
        <translation>%1 cambió en el disco desde que se leyó o se guardó aquí. No se sobrescribió.</translation>
    </message>
    <message>
        <source>Save under another name, or read the file again and lose the changes made here.</source>
        <translation>Guárdelo con otro nombre, o lea de nuevo el archivo y pierda los cambios hechos aquí.</translation>
    </message>
    <message>
        <source>Sa&amp;ve as…</source>
        <translation>Guardar co&amp;mo…</translation>
    </message>
    <message>
        <source>Read &amp;again</source>
        <translation>&amp;Leer de nuevo</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Cancelar</translation>
    </message>
    <message>
        <source>Changes are not saved</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved. Save them?</source>
        <translation>%1 tiene cambios sin guardar. ¿Guardarlos?</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Discard</source>
        <translation>&amp;Descartar</translation>
    </message>
    <message>
        <source>That file is open in another window. Choose another name.</source>
        <translation>Ese archivo está abierto en otra ventana. Elija otro nombre.</translation>
    </message>
    <message>
        <source>The job</source>
        <translation>El trabajo</translation>
    </message>
    <message>
        <source>job</source>
        <translation>trabajo</translation>
    </message>
</context>
<context>
    <name>ribwright::SharingPanel</name>
    <message>
        <source>rake pair</source>
        <translation>par de hastial</translation>
    </message>
    <message>
        <source>rip pair</source>
        <translation>par de tiras</translation>
    </message>
    <message>
        <source>short beyond long</source>
        <translation>corta tras larga</translation>
    </message>
    <message>
        <source>short ones together</source>
        <translation>cortas juntas</translation>
    </message>
    <message>
        <source>Rake pairs</source>
        <translation>Pares de hastial</translation>
    </message>
    <message>
        <source>Rip pairs</source>
        <translation>Pares de tiras</translation>
    </message>
    <message>
        <source>Short beyond long</source>
        <translation>Corta tras larga</translation>
    </message>
    <message>
        <source>Short ones together</source>
        <translation>Cortas juntas</translation>
    </message>
    <message>
        <source>Blanks that give two pieces or more</source>
        <translation>Láminas de las que salen dos piezas o más</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>Lámina</translation>
    </message>
    <message>
        <source>Gives</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Saves</source>
        <translation>Ahorra</translation>
    </message>
    <message>
        <source>Sharing is off: each piece has its own blank.</source>
        <translation>No se comparten láminas: cada pieza tiene la suya.</translation>
    </message>
    <message>
        <source>No two pieces can share a blank so that less is bought.</source>
        <translation>No hay dos piezas que compartan una lámina de modo que se compre menos.</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Pared %1</translation>
    </message>
    <message>
        <source>%1 turned</source>
        <translation>%1 girada</translation>
    </message>
    <message>
        <source>%1: nothing</source>
        <translation>%1: nada</translation>
    </message>
    <message>
        <source>%1: %2, blanks: %3</source>
        <translation>%1: %2, láminas: %3</translation>
    </message>
    <message>
        <source>Each kind alone would save: %1.</source>
        <translation>Cada modo por sí solo ahorraría: %1.</translation>
    </message>
    <message>
        <source>Blanks that give two pieces or more: %1. Less is bought by %2.</source>
        <translation>Láminas de las que salen dos piezas o más: %1. Se compra menos: %2.</translation>
    </message>
    <message>
        <source>%1 (%2 m²)</source>
        <translation>%1 (%2 m²)</translation>
    </message>
    <message>
        <source>%1 (%2 sq ft)</source>
        <translation>%1 (%2 ft²)</translation>
    </message>
</context>
<context>
    <name>ribwright::SilenceBar</name>
    <message>
        <source>Put aside</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>Why it is no trouble</source>
        <translation>Por qué no es problema</translation>
    </message>
    <message>
        <source>Why the finding is no trouble</source>
        <translation>Por qué el hallazgo no es problema</translation>
    </message>
    <message>
        <source>Put the chosen finding aside, with the reason; it can be taken back</source>
        <translation>Apartar el hallazgo elegido, con el motivo; se puede retomar</translation>
    </message>
    <message>
        <source>Put a finding aside</source>
        <translation>Apartar un hallazgo</translation>
    </message>
</context>
<context>
    <name>ribwright::SilencedList</name>
    <message>
        <source>Grade</source>
        <translation>Grado</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Why it was told</source>
        <translation>Por qué se avisó</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Retomar</translation>
    </message>
    <message>
        <source>Findings that were put aside</source>
        <translation>Hallazgos apartados</translation>
    </message>
    <message>
        <source>The chosen findings are told again</source>
        <translation>Los hallazgos elegidos se avisan de nuevo</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>ya no está</translation>
    </message>
    <message>
        <source>Take findings back</source>
        <translation>Retomar hallazgos</translation>
    </message>
</context>
<context>
    <name>ribwright::Similarity</name>
    <message>
        <source>The two points are one on the picture; set them far apart, such as at two corners.</source>
        <translation>Los dos puntos son uno en la imagen; póngalos lejos uno del otro, por ejemplo en dos esquinas.</translation>
    </message>
    <message>
        <source>The two points lie at one place on the wall; type where each of them lies.</source>
        <translation>Los dos puntos están en un mismo lugar de la pared; escriba dónde está cada uno.</translation>
    </message>
</context>
<context>
    <name>ribwright::StartPage</name>
    <message>
        <source>No job is open</source>
        <translation>No hay ningún trabajo abierto</translation>
    </message>
    <message>
        <source>Open a job…</source>
        <translation>Abrir un trabajo…</translation>
    </message>
    <message>
        <source>Begin a job from what its plans say, or open a job file to see its walls: which sheet hangs where, how long each blank is, and what wants a look before anything is ordered. You can also drop the file here.</source>
        <translation>Empiece un trabajo con lo que dicen sus planos, o abra un archivo de trabajo para ver sus paredes: qué lámina va dónde, cuánto mide cada pieza y qué hay que mirar antes de pedir nada. También puede soltar el archivo aquí.</translation>
    </message>
    <message>
        <source>New job…</source>
        <translation>Trabajo nuevo…</translation>
    </message>
    <message>
        <source>Jobs opened last</source>
        <translation>Trabajos abiertos últimamente</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>%1 (not there)</source>
        <translation>%1 (no está)</translation>
    </message>
    <message>
        <source>Work on one job was kept before it was saved.</source>
        <translation>Se conservó trabajo sin guardar de un trabajo.</translation>
    </message>
    <message>
        <source>Work on %1 jobs was kept before it was saved.</source>
        <translation>Se conservó trabajo sin guardar de %1 trabajos.</translation>
    </message>
    <message>
        <source>Open this job</source>
        <translation>Abrir este trabajo</translation>
    </message>
    <message>
        <source>Look at it…</source>
        <translation>Verlo…</translation>
    </message>
    <message>
        <source>Remove from the list</source>
        <translation>Quitar de la lista</translation>
    </message>
</context>
<context>
    <name>ribwright::StartPanel</name>
    <message>
        <source>The best of this column</source>
        <translation>Lo mejor de esta columna</translation>
    </message>
    <message>
        <source>Starts of the chosen wall, compared</source>
        <translation>Arranques de la pared elegida, comparados</translation>
    </message>
    <message>
        <source>The arrow keys show a start on the board, Enter chooses it, Escape goes back to the one that stands.</source>
        <translation>Las flechas muestran un arranque en el tablero, Intro lo elige, Escape vuelve al que rige.</translation>
    </message>
    <message>
        <source>How many starts have been tried</source>
        <translation>Cuántos arranques se han probado</translation>
    </message>
    <message>
        <source>Lays the wall out from each mark of the tape in one cover, and keeps the best</source>
        <translation>Traza la pared desde cada marca de la cinta en un ancho útil, y se queda con lo mejor</translation>
    </message>
    <message>
        <source>Working out the starts…</source>
        <translation>Calculando los arranques…</translation>
    </message>
    <message>
        <source>This wall has no sheets, and so no start.</source>
        <translation>Esta pared no tiene láminas, y por eso ningún arranque.</translation>
    </message>
    <message>
        <source>Point at a start to see it on the board; click or Enter chooses it. ● is the best of its column.</source>
        <translation>Señale un arranque para verlo en el tablero; un clic o Intro lo elige. ● es lo mejor de su columna.</translation>
    </message>
    <message>
        <source>Trying every start…</source>
        <translation>Probando todos los arranques…</translation>
    </message>
    <message>
        <source>Stopped before the first start was tried.</source>
        <translation>Detenido antes de probar el primer arranque.</translation>
    </message>
    <message>
        <source>The best of all: %1.</source>
        <translation>El mejor de todos: %1.</translation>
    </message>
    <message>
        <source>The best so far: %1.</source>
        <translation>El mejor hasta ahora: %1.</translation>
    </message>
    <message>
        <source>It stands already.</source>
        <translation>Ya rige.</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>entera</translation>
    </message>
    <message>
        <source>sq ft</source>
        <translation>pies²</translation>
    </message>
    <message>
        <source>m²</source>
        <translation>m²</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Arranque</translation>
    </message>
    <message>
        <source>First sheet</source>
        <translation>Primera lámina</translation>
    </message>
    <message>
        <source>Last sheet</source>
        <translation>Última lámina</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Láminas</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Largos</translation>
    </message>
    <message>
        <source>Seams at jambs</source>
        <translation>Juntas en jambas</translation>
    </message>
    <message>
        <source>Narrow rips</source>
        <translation>Reducidas estrechas</translation>
    </message>
    <message>
        <source>To stop for</source>
        <translation>Para detenerse</translation>
    </message>
    <message>
        <source>To look at</source>
        <translation>Para mirar</translation>
    </message>
    <message>
        <source>Steel bought</source>
        <translation>Acero comprado</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>rige</translation>
    </message>
    <message>
        <source>Try every start</source>
        <translation>Probar todos los inicios</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Tomarlo</translation>
    </message>
</context>
<context>
    <name>ribwright::StatedModel</name>
    <message>
        <source>Left jamb</source>
        <translation>Jamba izquierda</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Dintel</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Type here for a %1; it is put in when all it needs is there.</source>
        <translation>Escriba aquí para agregar: %1; se agrega cuando está todo lo que necesita.</translation>
    </message>
    <message>
        <source>%1: follows from what is stated</source>
        <translation>%1: se sigue de lo indicado</translation>
    </message>
    <message>
        <source>Band %1</source>
        <translation>Franja %1</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation>%1 de %2: %3</translation>
    </message>
    <message>
        <source>Add a %1</source>
        <translation>Agregar: %1</translation>
    </message>
    <message>
        <source>Paste cells: %1</source>
        <translation>Pegar celdas: %1</translation>
    </message>
    <message>
        <source>row %1, %2: %3</source>
        <translation>fila %1, %2: %3</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
</context>
<context>
    <name>ribwright::StatedPanel</name>
    <message>
        <source>Openings of the chosen wall</source>
        <translation>Vanos de la pared elegida</translation>
    </message>
    <message>
        <source>Penetrations of the chosen wall</source>
        <translation>Pasos de la pared elegida</translation>
    </message>
    <message>
        <source>Girts of the chosen wall</source>
        <translation>Largueros de la pared elegida</translation>
    </message>
    <message>
        <source>Bands of sheets of the chosen wall</source>
        <translation>Franjas de láminas de la pared elegida</translation>
    </message>
</context>
<context>
    <name>ribwright::StatedTable</name>
    <message>
        <source>Nothing was removed: %1</source>
        <translation>No se quitó nada: %1</translation>
    </message>
    <message>
        <source>row %1: &quot;%2&quot; would stand in no column that is typed</source>
        <translation>fila %1: «%2» no caería en ninguna columna que se escriba</translation>
    </message>
    <message>
        <source>; and %1 more</source>
        <translation>; y %1 más</translation>
    </message>
    <message>
        <source>Nothing was pasted: %1</source>
        <translation>No se pegó nada: %1</translation>
    </message>
</context>
<context>
    <name>ribwright::StatedWords</name>
    <message>
        <source>left corner</source>
        <translation>esquina izquierda</translation>
    </message>
    <message>
        <source>right corner</source>
        <translation>esquina derecha</translation>
    </message>
    <message>
        <source>near jamb</source>
        <translation>jamba próxima</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>centro</translation>
    </message>
    <message>
        <source>round</source>
        <translation>redondo</translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation>rectangular</translation>
    </message>
    <message>
        <source>web line</source>
        <translation>línea del alma</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>borde inferior</translation>
    </message>
    <message>
        <source>top</source>
        <translation>borde superior</translation>
    </message>
    <message>
        <source>up</source>
        <translation>hacia arriba</translation>
    </message>
    <message>
        <source>down</source>
        <translation>hacia abajo</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Id</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distancia</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Sill</source>
        <translation>Antepecho</translation>
    </message>
    <message>
        <source>Jamb trim</source>
        <translation>Remate de jamba</translation>
    </message>
    <message>
        <source>Centre height</source>
        <translation>Altura del centro</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Holgura</translation>
    </message>
    <message>
        <source>Typed by</source>
        <translation>Medido a</translation>
    </message>
    <message>
        <source>Flange turns</source>
        <translation>Ala</translation>
    </message>
    <message>
        <source>Member</source>
        <translation>Perfil</translation>
    </message>
    <message>
        <source>Clip slot</source>
        <translation>Ranura del clip</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Perfil de lámina</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Hole pattern</source>
        <translation>Patrón de agujeros</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Gap above the limit</source>
        <translation>Separación sobre el límite</translation>
    </message>
    <message>
        <source>From height</source>
        <translation>Desde la altura</translation>
    </message>
    <message>
        <source>new opening</source>
        <translation>vano nuevo</translation>
    </message>
    <message>
        <source>new penetration</source>
        <translation>paso nuevo</translation>
    </message>
    <message>
        <source>new girt</source>
        <translation>larguero nuevo</translation>
    </message>
    <message>
        <source>new band</source>
        <translation>franja nueva</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>corner</source>
        <translation>esquina</translation>
    </message>
    <message>
        <source>sheets&apos; lower end</source>
        <translation>extremo inferior de las láminas</translation>
    </message>
    <message>
        <source>as the profile</source>
        <translation>como el perfil</translation>
    </message>
    <message>
        <source>as the wall</source>
        <translation>como la pared</translation>
    </message>
</context>
<context>
    <name>ribwright::StatusLine</name>
    <message>
        <source>feet and inches</source>
        <translation>pies y pulgadas</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>milímetros</translation>
    </message>
    <message>
        <source>Findings of the whole job: %1</source>
        <translation>Hallazgos de todo el trabajo: %1</translation>
    </message>
    <message>
        <source>Undone, %1</source>
        <translation>Deshecho, %1</translation>
    </message>
    <message>
        <source>Done again, %1</source>
        <translation>Hecho de nuevo, %1</translation>
    </message>
</context>
<context>
    <name>ribwright::Survey</name>
    <message>
        <source>By the plans %1 from the top of concrete.</source>
        <translation>Según planos %1 desde la cara superior del concreto.</translation>
    </message>
    <message>
        <source>By the plans %1 above the chalk line.</source>
        <translation>Según planos %1 sobre la línea de tiza.</translation>
    </message>
    <message>
        <source>Measured %1 (%2).</source>
        <translation>Medido %1 (%2).</translation>
    </message>
    <message>
        <source>Read by %1.</source>
        <translation>Leyó %1.</translation>
    </message>
    <message>
        <source>Eave</source>
        <translation>Alero</translation>
    </message>
    <message>
        <source>Slab edge</source>
        <translation>Borde de la losa</translation>
    </message>
    <message>
        <source>Girt without an id</source>
        <translation>Larguero sin nombre</translation>
    </message>
    <message>
        <source>Girt %1</source>
        <translation>Larguero %1</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>mid %1-%2</source>
        <translation>medio %1-%2</translation>
    </message>
    <message>
        <source>%1, %2, %3 from the left corner.</source>
        <translation>%1, %2, a %3 de la esquina izquierda.</translation>
    </message>
    <message>
        <source>It does not reach to here.</source>
        <translation>No llega hasta aquí.</translation>
    </message>
    <message>
        <source>Not measured yet.</source>
        <translation>Todavía sin medir.</translation>
    </message>
</context>
<context>
    <name>ribwright::SurveyFile</name>
    <message>
        <source>is too large to be a survey</source>
        <translation>es demasiado grande para un levantamiento</translation>
    </message>
    <message>
        <source>Read a survey</source>
        <translation>Leer un levantamiento</translation>
    </message>
</context>
<context>
    <name>ribwright::SurveyFiles</name>
    <message>
        <source>Read a survey</source>
        <translation>Leer un levantamiento</translation>
    </message>
    <message>
        <source>Tables (*.csv);;All files (*)</source>
        <translation>Tablas (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>The survey could not be read; nothing was changed.</source>
        <translation>No se pudo leer el levantamiento; no se cambió nada.</translation>
    </message>
    <message>
        <source>The survey was read.</source>
        <translation>Se leyó el levantamiento.</translation>
    </message>
    <message>
        <source>Write the survey</source>
        <translation>Escribir el levantamiento</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>The survey could not be written.</source>
        <translation>No se pudo escribir el levantamiento.</translation>
    </message>
    <message>
        <source>Survey written into %1.</source>
        <translation>Levantamiento escrito en %1.</translation>
    </message>
</context>
<context>
    <name>ribwright::SurveyModel</name>
    <message>
        <source>Strike out %1 readings</source>
        <translation>Borrar %1 lecturas</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 lecturas</translation>
    </message>
    <message>
        <source>Strike out the reading: %1, %2</source>
        <translation>Borrar la lectura: %1, %2</translation>
    </message>
    <message>
        <source>Reading: %1, %2</source>
        <translation>Lectura: %1, %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
</context>
<context>
    <name>ribwright::SurveyPanel</name>
    <message>
        <source>Readings of the chosen wall, heights above the chalk line</source>
        <translation>Lecturas de la pared elegida, alturas sobre la línea de tiza</translation>
    </message>
    <message>
        <source>Props in place at midspan</source>
        <translation>Puntales puestos a mitad del entreje</translation>
    </message>
    <message>
        <source>Read by</source>
        <translation>Leyó</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Chalk line at</source>
        <translation>Línea de tiza en</translation>
    </message>
    <message>
        <source>Diagonal from bottom left</source>
        <translation>Diagonal desde abajo a la izquierda</translation>
    </message>
    <message>
        <source>Diagonal from top left</source>
        <translation>Diagonal desde arriba a la izquierda</translation>
    </message>
    <message>
        <source>Props in place</source>
        <translation>Puntales puestos</translation>
    </message>
    <message>
        <source>Chalk line</source>
        <translation>Línea de tiza</translation>
    </message>
    <message>
        <source>Diagonal</source>
        <translation>Diagonal</translation>
    </message>
    <message>
        <source>as planned: %1</source>
        <translation>según planos: %1</translation>
    </message>
</context>
<context>
    <name>ribwright::SurveyTable</name>
    <message>
        <source>Nothing was pasted: &quot;%1&quot; would stand where nothing is measured.</source>
        <translation>No se pegó nada: «%1» quedaría donde no se mide nada.</translation>
    </message>
    <message>
        <source>Nothing is measured on this wall: it has no girts.</source>
        <translation>En esta pared no se mide nada: no tiene largueros.</translation>
    </message>
</context>
<context>
    <name>ribwright::TrimChart</name>
    <message>
        <source>Stock lengths of trim and what is cut from each</source>
        <translation>Largos de almacén de remates y qué se corta de cada uno</translation>
    </message>
    <message>
        <source>ordered to length</source>
        <translation>se pide a su largo</translation>
    </message>
    <message>
        <source>proved: no less would do</source>
        <translation>demostrado: con menos no alcanza</translation>
    </message>
    <message>
        <source>not proved</source>
        <translation>no demostrado</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1. Lengths: %2, together %3; used %4 %, waste %5; %6</source>
        <translation>%1. Largos: %2, en total %3; aprovechado %4 %, desperdicio %5; %6</translation>
    </message>
    <message>
        <source>kept %1</source>
        <translation>guardar %1</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ribwright::TrimPanel</name>
    <message>
        <source>Take the shipped trim</source>
        <translation>Tomar los remates incluidos</translation>
    </message>
    <message>
        <source>Trim and rules…</source>
        <translation>Remates y reglas…</translation>
    </message>
    <message>
        <source>Takes rules, and the trim that they name, for all that the job has no rule for</source>
        <translation>Toma reglas, y los remates que nombran, para todo lo que no tiene regla en el trabajo</translation>
    </message>
    <message>
        <source>What is trimmed with what, how long, and in which lengths it is sold</source>
        <translation>Qué se remata con qué, de qué largo, y en qué largos se vende</translation>
    </message>
    <message>
        <source>Pieces of trim, in the order in which they are set</source>
        <translation>Piezas de remate, en el orden en que se colocan</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Remate</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Partes</translation>
    </message>
    <message>
        <source>The job states no trim. Take what ships, and make it the job&apos;s own.</source>
        <translation>El trabajo no indica remates. Tome los incluidos y hágalos propios del trabajo.</translation>
    </message>
    <message>
        <source>No rule finds a place to trim.</source>
        <translation>Ninguna regla encuentra un lugar que rematar.</translation>
    </message>
    <message>
        <source>Pieces: %1. Working out how to cut them…</source>
        <translation>Piezas: %1. Calculando cómo cortarlas…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source> lb</source>
        <translation> lb</translation>
    </message>
    <message>
        <source>Pieces: %1. Stock lengths: %2, together %3, %4; used %5 %, waste %6</source>
        <translation>Piezas: %1. Largos de almacén: %2, en total %3, %4; aprovechado %5 %, desperdicio %6</translation>
    </message>
</context>
<context>
    <name>ribwright::TypedField</name>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
</context>
<context>
    <name>ribwright::UseBars</name>
    <message>
        <source>pieces</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>cut-outs</source>
        <translation>recortes</translation>
    </message>
    <message>
        <source>drops kept</source>
        <translation>sobrantes guardados</translation>
    </message>
    <message>
        <source>spares</source>
        <translation>repuestos</translation>
    </message>
    <message>
        <source>waste</source>
        <translation>desperdicio</translation>
    </message>
</context>
<context>
    <name>ribwright::WallBoard</name>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>The chosen wall seen from outside. Plus and minus zoom, arrow keys move, 0 shows the whole wall, Tab goes to the next sheet in hanging order, Escape lets go.</source>
        <translation>La pared elegida vista desde afuera. Más y menos acercan y alejan, las flechas mueven, 0 muestra toda la pared, Tab va a la siguiente lámina en orden de colocación, Escape suelta.</translation>
    </message>
    <message>
        <source>%1, chosen: %2</source>
        <translation>%1, elegido: %2</translation>
    </message>
</context>
<context>
    <name>ribwright::WallState</name>
    <message>
        <source>not laid out</source>
        <translation>sin despiece</translation>
    </message>
    <message>
        <source>by others</source>
        <translation>por terceros</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Pared %1</translation>
    </message>
    <message>
        <source>Wall %1, %2</source>
        <translation>Pared %1, %2</translation>
    </message>
    <message>
        <source>1 sheet</source>
        <translation>1 lámina</translation>
    </message>
    <message>
        <source>%1 sheets</source>
        <translation>%1 láminas</translation>
    </message>
    <message>
        <source>held</source>
        <translation>retenido</translation>
    </message>
    <message>
        <source>Hangs from left to right.</source>
        <translation>Se coloca de izquierda a derecha.</translation>
    </message>
    <message>
        <source>Hangs from right to left.</source>
        <translation>Se coloca de derecha a izquierda.</translation>
    </message>
    <message>
        <source>Findings: stop %1, look %2, note %3.</source>
        <translation>Hallazgos: detener %1, revisar %2, nota %3.</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>liberado</translation>
    </message>
    <message>
        <source>%1/%2 cleared</source>
        <translation>%1/%2 liberados</translation>
    </message>
    <message>
        <source>Drill batches: %1 of %2 cleared. Drill nothing in a batch that is held.</source>
        <translation>Lotes de taladrado: %1 de %2 liberados. No taladre nada de un lote retenido.</translation>
    </message>
</context>
<context>
    <name>ribwright::WallView</name>
    <message>
        <source>1 : %1</source>
        <translation>1 : %1</translation>
    </message>
    <message>
        <source>Wall &amp;board</source>
        <translation>Pared en &amp;pantalla</translation>
    </message>
    <message>
        <source>The wall on the screen: every part can be chosen</source>
        <translation>La pared en la pantalla: se puede elegir cada parte</translation>
    </message>
    <message>
        <source>Page&amp;s</source>
        <translation>Páginas impre&amp;sas</translation>
    </message>
    <message>
        <source>The wall&apos;s pages as they are printed</source>
        <translation>Las páginas de la pared como se imprimen</translation>
    </message>
    <message>
        <source>%1, seen from outside</source>
        <translation>%1, vista desde afuera</translation>
    </message>
    <message>
        <source>page %1 of %2, %3 %</source>
        <translation>página %1 de %2, %3 %</translation>
    </message>
    <message>
        <source>This job has no walls yet</source>
        <translation>Este trabajo todavía no tiene paredes</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Dibujar</translation>
    </message>
    <message>
        <source>More to draw on the wall</source>
        <translation>Más para dibujar en la pared</translation>
    </message>
</context>
<context>
    <name>ribwright::WindowActions</name>
    <message>
        <source>As the &amp;system</source>
        <translation>Como el &amp;sistema</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>Read &amp;again</source>
        <translation>&amp;Leer de nuevo</translation>
    </message>
    <message>
        <source>S&amp;top the packet</source>
        <translation>&amp;Detener el paquete</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>As &amp;printed</source>
        <translation>Como se &amp;imprime</translation>
    </message>
    <message>
        <source>Show the pages as they are printed, instead of the wall</source>
        <translation>Mostrar las páginas como se imprimen, en lugar de la pared</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>A&amp;cercar</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>A&amp;lejar</translation>
    </message>
    <message>
        <source>&amp;Fit</source>
        <translation>A&amp;justar</translation>
    </message>
    <message>
        <source>P&amp;revious page</source>
        <translation>Página an&amp;terior</translation>
    </message>
    <message>
        <source>&amp;Next page</source>
        <translation>Página &amp;siguiente</translation>
    </message>
    <message>
        <source>Pap&amp;er</source>
        <translation>&amp;Papel</translation>
    </message>
    <message>
        <source>Ne&amp;xt panel</source>
        <translation>Panel si&amp;guiente</translation>
    </message>
    <message>
        <source>Pre&amp;vious panel</source>
        <translation>Panel ant&amp;erior</translation>
    </message>
    <message>
        <source>One step &amp;back</source>
        <translation>&amp;Un paso atrás</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>Aparie&amp;ncia</translation>
    </message>
    <message>
        <source>&amp;Text size</source>
        <translation>Tamaño del te&amp;xto</translation>
    </message>
    <message>
        <source>&amp;Job</source>
        <translation>&amp;Trabajo</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Edición</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Sa&amp;ve as…</source>
        <translation>Guardar co&amp;mo…</translation>
    </message>
    <message>
        <source>Save pac&amp;ket…</source>
        <translation>Guardar pa&amp;quete…</translation>
    </message>
    <message>
        <source>Read a s&amp;urvey…</source>
        <translation>Leer un le&amp;vantamiento…</translation>
    </message>
    <message>
        <source>Take readings from a table, in place of those of the same girts</source>
        <translation>Tomar lecturas de una tabla, en lugar de las de los mismos largueros</translation>
    </message>
    <message>
        <source>&amp;Write the survey…</source>
        <translation>Escri&amp;bir el levantamiento…</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Nuevo…</translation>
    </message>
    <message>
        <source>&amp;Building…</source>
        <translation>&amp;Edificio…</translation>
    </message>
    <message>
        <source>Make the building longer, wider or higher</source>
        <translation>Hacer el edificio más largo, más ancho o más alto</translation>
    </message>
    <message>
        <source>Read an opening sche&amp;dule…</source>
        <translation>Leer un cuadro &amp;de vanos…</translation>
    </message>
    <message>
        <source>Change and add openings by a table; none is removed</source>
        <translation>Cambiar y agregar vanos según una tabla; no se quita ninguno</translation>
    </message>
    <message>
        <source>Write the openin&amp;g schedule…</source>
        <translation>Escribir el cuadro de v&amp;anos…</translation>
    </message>
    <message>
        <source>As &amp;shipped</source>
        <translation>Como &amp;vienen</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Cor&amp;tar</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>E&amp;liminar</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>Elegir t&amp;odo</translation>
    </message>
    <message>
        <source>&amp;Job particulars…</source>
        <translation>&amp;Datos del trabajo…</translation>
    </message>
    <message>
        <source>&amp;Wall</source>
        <translation>&amp;Pared</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Quick start</source>
        <translation>&amp;Inicio rápido</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Teclas</translation>
    </message>
    <message>
        <source>Pane&amp;ls</source>
        <translation>Pane&amp;les</translation>
    </message>
    <message>
        <source>Read a price &amp;list…</source>
        <translation>Leer una &amp;lista de precios…</translation>
    </message>
    <message>
        <source>Change, add and strike prices by a table; what it does not name stays</source>
        <translation>Cambiar, agregar y quitar precios con una tabla; lo que no nombra se queda</translation>
    </message>
    <message>
        <source>Write the pri&amp;ce list…</source>
        <translation>Escribir la lista de pre&amp;cios…</translation>
    </message>
    <message>
        <source>With a row for everything that has no price yet</source>
        <translation>Con un renglón para todo lo que aún no tiene precio</translation>
    </message>
    <message>
        <source>Write the cost of the jo&amp;b…</source>
        <translation>Escribir el costo del tra&amp;bajo…</translation>
    </message>
</context>
<context>
    <name>ribwright::WindowDocks</name>
    <message>
        <source>Tables</source>
        <translation>Tablas</translation>
    </message>
    <message>
        <source>Particulars</source>
        <translation>Datos</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
</context>
<context>
    <name>ribwright::WindowPanels</name>
    <message>
        <source>Starts co&amp;mpared</source>
        <translation>Arranques co&amp;mparados</translation>
    </message>
    <message>
        <source>Sheets of the chosen wall</source>
        <translation>Láminas de la pared elegida</translation>
    </message>
    <message>
        <source>Shee&amp;ts: %1</source>
        <translation>&amp;Láminas: %1</translation>
    </message>
    <message>
        <source>Openin&amp;gs: %1</source>
        <translation>V&amp;anos: %1</translation>
    </message>
    <message>
        <source>Penetrations: %1</source>
        <translation>Pasos: %1</translation>
    </message>
    <message>
        <source>Gi&amp;rts: %1</source>
        <translation>La&amp;rgueros: %1</translation>
    </message>
    <message>
        <source>S&amp;urvey: %1</source>
        <translation>Le&amp;vantamiento: %1</translation>
    </message>
    <message>
        <source>&amp;Drill batches: %1/%2</source>
        <translation>L&amp;otes: %1/%2</translation>
    </message>
    <message>
        <source>Bands: %1</source>
        <translation>Franjas: %1</translation>
    </message>
    <message>
        <source>Sharing of blanks</source>
        <translation>Piezas de una misma lámina</translation>
    </message>
    <message>
        <source>Sheets and lengths</source>
        <translation>Láminas y largos</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Remates</translation>
    </message>
    <message>
        <source>&amp;Cost</source>
        <translation>&amp;Costo</translation>
    </message>
    <message>
        <source>Compared</source>
        <translation>Comparado</translation>
    </message>
    <message>
        <source>Orders placed</source>
        <translation>Pedidos hechos</translation>
    </message>
</context>
</TS>
