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
    <name>ribwright::MainWindow</name>
    <message>
        <source>Sheets of the chosen wall</source>
        <translation>Láminas de la pared elegida</translation>
    </message>
    <message>
        <source>Openings of the chosen wall</source>
        <translation>Vanos de la pared elegida</translation>
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
        <source>Folder for the packet</source>
        <translation>Carpeta para el paquete</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>todavía ninguno</translation>
    </message>
    <message>
        <source>%1 could not be read.</source>
        <translation>No se pudo leer %1.</translation>
    </message>
    <message>
        <source>Read again.</source>
        <translation>Leído de nuevo.</translation>
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
        <source>Shee&amp;ts: %1</source>
        <translation>&amp;Láminas: %1</translation>
    </message>
    <message>
        <source>Openin&amp;gs: %1</source>
        <translation>V&amp;anos: %1</translation>
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
        <source>The job could not be saved. Nothing is lost: it is still open, with all its changes.</source>
        <translation>No se pudo guardar el trabajo. Nada se ha perdido: sigue abierto, con todos sus cambios.</translation>
    </message>
    <message>
        <source>%1 (%2)[*], Ribwright</source>
        <translation>%1 (%2)[*], Ribwright</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Gi&amp;rts and survey: %1</source>
        <translation>La&amp;rgueros y levantamiento: %1</translation>
    </message>
    <message>
        <source>&amp;Drill batches: %1/%2</source>
        <translation>L&amp;otes: %1/%2</translation>
    </message>
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
        <source>round hole</source>
        <translation>paso redondo</translation>
    </message>
    <message>
        <source>rectangular hole</source>
        <translation>paso rectangular</translation>
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
        <source>Id</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>From left corner</source>
        <translation>Desde la esquina izquierda</translation>
    </message>
    <message>
        <source>Sill</source>
        <translation>Antepecho</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Dintel</translation>
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
        <source>Sight point: %1, farther away</source>
        <translation>Punto de vista: %1, más lejos</translation>
    </message>
    <message>
        <source>Sight point: %1</source>
        <translation>Punto de vista: %1</translation>
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
        <source>Show &amp;the plan</source>
        <translation>Mos&amp;trar el plano</translation>
    </message>
    <message>
        <source>The picture that lies over this wall</source>
        <translation>La imagen que está sobre esta pared</translation>
    </message>
    <message>
        <source>Strength of the plan</source>
        <translation>Intensidad del plano</translation>
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
        <source>Open a job file to see its walls: which sheet hangs where, how long each blank is, and what wants a look before anything is ordered. You can also drop the file here.</source>
        <translation>Abra un archivo de trabajo para ver sus paredes: qué lámina va en cada lugar, el largo bruto de cada una y qué conviene revisar antes de pedir nada. También puede soltar el archivo aquí.</translation>
    </message>
    <message>
        <source>Open a job…</source>
        <translation>Abrir un trabajo…</translation>
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
</context>
</TS>
